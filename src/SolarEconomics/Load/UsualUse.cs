using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>What a site uses at each hour of each month, from its own record: to lay beside a made-up or fitted year of weather.</summary>
/// <remarks>Equation: use = generation at AC + import + discharge − export − charge − standby, interval by interval where all are known; then the mean by calendar month and hour of the site's clock.
/// A mean has no peaks: what a plan would curtail at an hour of little use is estimated low. Immutable, so safe to share between threads.</remarks>
public sealed class UsualUse : IFinding
{
    private readonly double?[,] _kw;

    private UsualUse(Site site, double?[,] kw, int intervals) => (Site, _kw, Intervals) = (site, kw, intervals);

    /// <summary>The site.</summary>
    public Site Site { get; }

    /// <summary>Intervals of the record in which use could be told.</summary>
    public int Intervals { get; }

    /// <summary>Mean use; of an hour that the record does not tell, that of the whole year's same hour, or of all hours. Unit: kW.</summary>
    /// <param name="month">1 is January.</param>
    /// <param name="hour">Hour of the site's clock, 0 to 23.</param>
    public double MeanKw(int month, int hour)
    {
        var (m, h) = ((int)Require.Within(month, 1, 12, "month; 1 is January") - 1, (int)Require.Within(hour, 0, 23, "hour of the day"));
        if (_kw[m, h] is { } told) return told;
        double[] sameHour = [.. Enumerable.Range(0, 12).Select(x => _kw[x, h]).OfType<double>()];
        return sameHour.Length > 0 ? sameHour.Average() : _kw.Cast<double?>().OfType<double>().Average();
    }

    /// <summary>The use of a site that meters what flows in and out.</summary>
    /// <param name="site">The site with its plant.</param>
    /// <param name="readings">Interval import and export, generation, and the battery's flows where there is one.</param>
    /// <exception cref="ArgumentException">No interval of the record has all of them.</exception>
    public static UsualUse Of(Site site, Readings readings)
    {
        ArgumentNullException.ThrowIfNull(site);
        ArgumentNullException.ThrowIfNull(readings);
        var records = SiteRecords.Lay(site, readings);
        var (sums, hours) = (new double[12, 24], new double[12, 24]);
        var intervals = 0;
        for (var i = 0; i < records.Grid.Count; i++)
        {
            if (UseIn(records, i) is not { } kwh) continue;
            var local = (records.Grid.StartOf(i) + (records.Grid.Step / 2)).InZone(site.Zone);
            sums[local.Month - 1, local.Hour] += Math.Max(0, kwh);
            hours[local.Month - 1, local.Hour] += records.Grid.StepHours;
            intervals++;
        }
        if (intervals == 0) throw Throw.NoUseTold(site.Name);
        var kw = new double?[12, 24];
        for (var m = 0; m < 12; m++)
            for (var h = 0; h < 24; h++) kw[m, h] = hours[m, h] > 0 ? sums[m, h] / hours[m, h] : null;
        return new UsualUse(site, kw, intervals);
    }

    /// <summary>The use laid on a grid, one value per step, for <see cref="PlantOutputOptions.UseKwh"/>. Unit: kWh.</summary>
    /// <param name="grid">The steps, such as those of a weather record.</param>
    public IReadOnlyList<double> On(IntervalGrid grid)
    {
        var kwh = new double[grid.Count];
        for (var i = 0; i < kwh.Length; i++)
        {
            var local = (grid.StartOf(i) + (grid.Step / 2)).InZone(Site.Zone);
            kwh[i] = MeanKw(local.Month, local.Hour) * grid.StepHours;
        }
        return kwh;
    }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        var year = Enumerable.Range(1, 12).Sum(month => Enumerable.Range(0, 24).Sum(hour => MeanKw(month, hour)) * 365.25 / 12);
        return new Finding(Wording.Kwh(year, culture), string.Create(culture, $"a year, about, is used at {Site.Name}: told by {Intervals:#,0} intervals in which every flow was read."))
        {
            Tables = [new FindingTable("Mean use, kW, by month and hour", ["Month", .. Enumerable.Range(0, 24).Select(h => h.ToString("00", culture))], [.. Enumerable.Range(1, 12).Select(month => (IReadOnlyList<string>)
            [
                culture.DateTimeFormat.GetAbbreviatedMonthName(month), .. Enumerable.Range(0, 24).Select(hour => MeanKw(month, hour).ToString("0.00", culture)),
            ])])],
            Notes = ["Use = generation at AC + import + discharge − export − charge − standby. A mean has no peaks: what a plan would curtail is estimated low."],
        };
    }

    private static double? UseIn(SiteRecords records, int i)
    {
        if (records.Import is not { } import || !import.Known[i]) return null;
        var use = import.Kwh[i] - records.StandbyKwh[i];
        foreach (var place in records.Generation)
        {
            if (!place.Series.Known[i]) return null;
            use += place.Series.Kwh[i] * place.ToAcMiddle;
        }
        foreach (var (series, sign) in new[] { (records.Export, -1), (records.Discharge, 1), (records.Charge, -1) })
        {
            if (series is null) continue;
            if (!series.Known[i]) return null;
            use += sign * series.Kwh[i];
        }
        return use;
    }
}
