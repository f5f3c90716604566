namespace SolarEconomics;

/// <summary>A sum that no bill of a plan lies below, made of what a linear program can say: prices per kWh, kWh beyond the edge of a block, highest demands.</summary>
/// <remarks>
/// Equation: bills ≥ constant − slack + Σ import price · import − export price · export + Σ beyond the edges · price + Σ demands · price. Blocks that get dearer
/// (for export: that pay less) and demand are exact, with their memory too. Blocks that get cheaper, or run on from bill to bill, count at the price best for the
/// home. Minimum bills and limits of credit are left out. Slack is all that rounding can take off.
/// </remarks>
internal sealed class BillFloor
{
    private readonly Dictionary<string, List<BillPeak>> _demands = new(StringComparer.Ordinal);
    private int _lines;

    private BillFloor(int count, IReadOnlyList<int> periodStarts) => (ImportPerKwh, ExportPerKwh, PeriodStarts) = (new double[count], new double[count], periodStarts);

    /// <summary>The least that a further kWh of import costs, with tax.</summary>
    internal double[] ImportPerKwh { get; }

    /// <summary>The most that a further kWh of export is paid, with tax where it is taxed.</summary>
    internal double[] ExportPerKwh { get; }

    /// <summary>The first interval of each billing period.</summary>
    internal IReadOnlyList<int> PeriodStarts { get; }

    /// <summary>Fixed charges less what rounding can take off.</summary>
    internal double Constant { get; private set; }

    internal List<BillExcess> Excesses { get; } = [];

    internal List<BillPeak> Peaks { get; } = [];

    /// <exception cref="ArgumentException">A part of the tariff cannot be bounded.</exception>
    internal static BillFloor Of(BillingPlan plan)
    {
        var ticks = new PlanTicks(plan.Grid);
        var floor = new BillFloor(plan.Grid.Count, [.. plan.Periods.Select(p => ticks.FirstFrom(plan.BillingZone.AtStartOfDay(p.Start).ToInstant().ToUnixTimeSeconds()))]);
        foreach (var segment in plan.Segments)
        {
            if (segment.Tariff.NetsWithinMinutes != 0) throw Throw.NoBillFloor(segment.Tariff, "nets import and export");
            if (segment.Tariff.IsBuyAllSellAll) throw Throw.NoBillFloor(segment.Tariff, "buys all and sells all");
            floor._lines = 0;
            foreach (var (part, source) in segment.Parts.Zip(segment.Sources))
                if (!part.AddFloor(floor)) throw Throw.NoBillFloor(segment.Tariff, $"has \"{source.Name}\" ({source.GetType().Name})");
            floor.Constant -= RoundingOf(segment.Tariff, floor._lines);
        }
        return floor;
    }

    /// <summary>Fixed charges, and prices that hold for every kWh of an interval.</summary>
    internal bool AddByTheHour(SegmentPart part, int lines = 1)
    {
        part.AddPrices(EnergySide.Import, withTax: true, ImportPerKwh);
        part.AddPrices(EnergySide.Export, withTax: true, ExportPerKwh);
        _lines += lines;
        if (!part.IsPricedByTheHour) return true;
        var nothing = new double[ImportPerKwh.Length];
        Constant += part.CostWithTax(new BillRun(nothing, nothing, new BillCarry()));
        return true;
    }

    internal void AddPrice(EnergySide side, int interval, double perKwh) => (side == EnergySide.Import ? ImportPerKwh : ExportPerKwh)[interval] += perKwh;

    internal void AddLines(int lines) => _lines += lines;

    internal void AddSlack(double amount) => Constant -= amount;

    /// <summary>The demands of a charge so far, by its name.</summary>
    internal List<BillPeak> DemandsOf(string charge)
    {
        if (!_demands.TryGetValue(charge, out var demands)) _demands.Add(charge, demands = []);
        return demands;
    }

    /// <summary>Every line, the tax on their sum and the total may each lose the last digit, or half of it.</summary>
    private static double RoundingOf(Tariff tariff, int lines)
    {
        var rounding = tariff.Rounding;
        if (rounding.Place == RoundingPlace.Nowhere) return 0;
        var most = Math.Pow(10, -(rounding.Digits ?? tariff.Currency.MinorDigits)) * (rounding.Mode is RoundingMode.HalfUp or RoundingMode.HalfEven ? 0.5 : 1);
        var tax = tariff.Parts.Count == 0 ? 0 : (double)tariff.Parts.Max(tariff.TaxOn);
        return rounding.Place == RoundingPlace.Line ? most * ((lines * (1 + tax)) + 2) : most;
    }
}
