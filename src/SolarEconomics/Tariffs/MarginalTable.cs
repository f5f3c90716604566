using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>The worth of one more kWh by hour of the day and month: 24 × 12 finite differences of whole bills.</summary>
/// <remarks>Equation: (bill(E + δ) − bill(E)) / δ and (bill(E) − bill(E − δ)) / δ, δ spread evenly over the intervals of that hour in that month; bills without rounding.
/// A kWh generated lowers import where there is any and is sent where there is none; a kWh used lowers export first.</remarks>
public sealed class MarginalTable : IFinding
{
    private MarginalTable(IReadOnlyList<MarginalCell> cells, Currency currency, double differenceKwh) => (Cells, Currency, DifferenceKwh) = (cells, currency, differenceKwh);

    /// <summary>The cells, month by month and hour by hour; only those that the energy touches.</summary>
    public IReadOnlyList<MarginalCell> Cells { get; }

    /// <summary>Currency of all worths.</summary>
    public Currency Currency { get; }

    /// <summary>The finite difference δ of each cell. Unit: kWh.</summary>
    public double DifferenceKwh { get; }

    /// <summary>The table of a tariff on a household's energy.</summary>
    /// <param name="tariffs">The history; rounding is left out.</param>
    /// <param name="grid">Intervals of the energy, at most an hour each.</param>
    /// <param name="energy">Import and export in each.</param>
    /// <param name="zone">Clock of the hours and months.</param>
    /// <param name="differenceKwh">δ, above 0. Default: 1 kWh for each cell.</param>
    /// <param name="cancel">Stops between two cells.</param>
    /// <exception cref="ArgumentException">A column has another length than the grid, or holds no finite number somewhere.</exception>
    public static MarginalTable Of(TariffHistory tariffs, IntervalGrid grid, MeteredEnergy energy, DateTimeZone zone, double differenceKwh = 1, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(tariffs);
        ArgumentNullException.ThrowIfNull(energy);
        ArgumentNullException.ThrowIfNull(zone);
        return Of(tariffs, grid, energy, zone, differenceKwh, (intervals, moreUseKwh) => With(energy, intervals, moreUseKwh), cancel);
    }

    private static MarginalTable Of(TariffHistory tariffs, IntervalGrid grid, MeteredEnergy energy, DateTimeZone zone, double differenceKwh,
        Func<int[], double, MeteredEnergy> changed, CancellationToken cancel)
    {
        _ = Require.Within(differenceKwh, 1e-6, 1e6, "kWh");
        var exact = TariffHistory.Of([.. tariffs.Versions.Select(v => v.Rounded(RoundingMode.HalfUp, RoundingPlace.Nowhere))]);
        var plan = exact.On(grid, zone);
        var bill = plan.Bills(energy).Sum(b => b.Total.Amount);
        var cells = new List<MarginalCell>();
        foreach (var cell in Enumerable.Range(0, grid.Count).Select(i => (Index: i, Local: grid.StartOf(i).InZone(zone).LocalDateTime))
            .GroupBy(x => (x.Local.Month, x.Local.Hour), x => x.Index).OrderBy(g => g.Key))
        {
            cancel.ThrowIfCancellationRequested();
            int[] intervals = [.. cell];
            double Change(double moreUseKwh) => (double)(plan.Bills(changed(intervals, moreUseKwh / intervals.Length)).Sum(b => b.Total.Amount) - bill) / differenceKwh;
            cells.Add(new MarginalCell(cell.Key.Month, cell.Key.Hour, Generated: -Change(-differenceKwh), Used: Change(differenceKwh)));
        }
        return new MarginalTable(cells, tariffs.Currency, differenceKwh);
    }

    /// <summary>The table of a home from its records.</summary>
    /// <param name="site">Place, clock and plant.</param>
    /// <param name="readings">Its readings; import is needed.</param>
    /// <param name="tariffs">The history; rounding is left out.</param>
    /// <exception cref="RecordException">The readings hold no import.</exception>
    public static MarginalTable Of(Site site, Readings readings, TariffHistory tariffs) => Of(HomeEnergy.Of(site, readings, tariffs));

    /// <summary>The table of a home as it is or with another plant. A modelled battery stores the kWh or gives it later; a recorded one is left as it was.</summary>
    /// <param name="home">Its energy, such as <c>HomeEnergy.Of(site, readings, tariffs).WithoutPlant()</c>.</param>
    /// <param name="differenceKwh">δ, above 0. Default: 1 kWh for each cell.</param>
    /// <param name="cancel">Stops between two cells.</param>
    public static MarginalTable Of(HomeEnergy home, double differenceKwh = 1, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(home);
        return Of(home.Tariffs, home.Grid, home.Energy, home.Site.Zone, differenceKwh, home.Changed, cancel);
    }

    /// <summary>What a kWh of use is worth when it is moved from one hour to another, the mean of the months.</summary>
    /// <param name="fromHour">Hour that it leaves, 0 to 23.</param>
    /// <param name="toHour">Hour that it goes to, 0 to 23.</param>
    public double WorthOfMoving(int fromHour, int toHour) =>
        Cells.GroupBy(c => c.Month).Average(month => month.First(c => c.Hour == fromHour).Generated - month.First(c => c.Hour == toHour).Used);

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        var (least, most) = (Cells.MinBy(c => c.Generated)!, Cells.MaxBy(c => c.Generated)!);
        string Price(double worth) => Wording.Price(Money.Nominal(Math.Round((decimal)worth, 3), Currency), culture);
        return new Finding(Price(most.Generated), $"is what one more kWh is worth at its best, {At(most, culture)}; at its least it is {Price(least.Generated)}, {At(least, culture)}.")
        {
            Notes = [$"Finite difference of {DifferenceKwh.ToString("0.###", culture)} kWh in each hour of each month, on bills without rounding; tax included."],
            Cautions = [Bill.Caution],
            Tables = [new FindingTable($"Worth of one more kWh generated ({Currency} a kWh)", ["hour", .. Months(culture)], [.. Enumerable.Range(0, 24).Select(h => Row(h, culture))])],
        };
    }

    private IEnumerable<int> MonthsThere => Cells.Select(c => c.Month).Distinct().Order();

    private IEnumerable<string> Months(CultureInfo culture) => MonthsThere.Select(m => culture.DateTimeFormat.GetAbbreviatedMonthName(m));

    private IReadOnlyList<string> Row(int hour, CultureInfo culture) =>
        [hour.ToString("00", culture), .. MonthsThere.Select(m => Cells.FirstOrDefault(c => c.Month == m && c.Hour == hour)?.Generated.ToString("0.000", culture) ?? "")];

    private static string At(MarginalCell cell, CultureInfo culture) => $"{culture.DateTimeFormat.GetMonthName(cell.Month)} at {cell.Hour.ToString("00", culture)}:00";

    /// <summary>The same energy with a little more or less used in some intervals: export and import give way in turn, and neither falls below zero.</summary>
    internal static MeteredEnergy With(MeteredEnergy energy, int[] intervals, double moreUseKwh)
    {
        var (import, export) = (energy.ImportKwh.AsSpan().ToArray(), energy.ExportKwh.AsSpan().ToArray());
        foreach (var i in intervals)
        {
            var (from, to) = moreUseKwh > 0 ? (export, import) : (import, export);
            var taken = Math.Min(from[i], Math.Abs(moreUseKwh));
            from[i] -= taken;
            to[i] += Math.Abs(moreUseKwh) - taken;
        }
        return energy with { ImportKwh = import, ExportKwh = export };
    }
}
