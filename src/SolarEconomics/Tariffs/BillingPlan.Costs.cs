namespace SolarEconomics;

/// <content>Totals without lines and rounding, for comparing many tariffs or many futures.</content>
public sealed partial class BillingPlan
{
    /// <summary>Whether every charge is fixed or a price by the hour, so that <see cref="CostsBeforeRounding"/> can be asked.
    /// Blocks, tiers, demand, levies, minimum bills and net metering need the whole bill.</summary>
    public bool IsPricedByTheHour => _segments.All(s => s.Tariff is { NetsWithinMinutes: 0, IsBuyAllSellAll: false } && s.Parts.All(p => p.IsPricedByTheHour));

    /// <summary>Name of the import rate of every interval: of the first part that prices import by hours; "import" where none does.</summary>
    internal string[] ImportRates()
    {
        var names = new string[Grid.Count];
        Array.Fill(names, "import");
        foreach (var segment in _segments)
            if (segment.Parts.OfType<SegmentEnergy>().FirstOrDefault(p => p.Part.Side == EnergySide.Import) is { } energy)
                for (var i = 0; i < energy.Bands.Length; i++)
                    if (energy.Bands[i] < energy.Part.Rates.Count) names[energy.First + i] = energy.Part.Rates[energy.Bands[i]].Name;
        return names;
    }

    /// <summary>The intervals of every billing day. An interval that the end of a day cuts is a piece of its own, in the period that its start lies in.</summary>
    internal IReadOnlyList<BilledDay> BilledDays()
    {
        var ticks = new PlanTicks(Grid);
        var days = new List<BilledDay>();
        for (var period = 0; period < Periods.Count; period++)
        {
            for (var day = Periods[period].Start; day < Periods[period].End; day = day.PlusDays(1))
            {
                var first = ticks.FirstFrom(BillingZone.AtStartOfDay(day).ToInstant().ToUnixTimeSeconds());
                var end = ticks.FirstFrom(BillingZone.AtStartOfDay(day.PlusDays(1)).ToInstant().ToUnixTimeSeconds());
                if (end > first) days.Add(new BilledDay(first, end - first, period));
            }
        }
        return days;
    }

    /// <summary>What each period costs with tax, before any rounding: fixed charges, import and export without lines.</summary>
    /// <param name="importKwh">Energy taken from the grid in each interval. Unit: kWh.</param>
    /// <param name="exportKwh">Energy sent to the grid in each interval. Unit: kWh.</param>
    /// <returns>One amount for each period, in units of the currency; equals the bills' totals but for rounding.</returns>
    /// <exception cref="InvalidOperationException">The tariff is not <see cref="IsPricedByTheHour"/>.</exception>
    /// <exception cref="ArgumentException">A column has another length than the grid, or holds no finite number somewhere.</exception>
    public double[] CostsBeforeRounding(ReadOnlySpan<double> importKwh, ReadOnlySpan<double> exportKwh)
    {
        if (importKwh.Length != Grid.Count) throw Throw.WrongLength(nameof(importKwh), importKwh.Length, Grid.Count);
        if (exportKwh.Length != Grid.Count) throw Throw.WrongLength(nameof(exportKwh), exportKwh.Length, Grid.Count);
        var run = new BillRun(importKwh, exportKwh, new BillCarry());
        var costs = new double[Periods.Count];
        var sum = 0.0;
        foreach (var segment in _segments)
            foreach (var part in segment.Parts)
            {
                if (!part.IsPricedByTheHour) throw Throw.NotByTheHour(segment.Tariff);
                var cost = part.CostWithTax(run);
                costs[segment.Period] += cost;
                sum += cost;
            }
        // A value that is no number makes the sum none: only then is the column searched for it.
        if (!double.IsFinite(sum)) CheckColumns(importKwh, exportKwh);
        return costs;
    }
}
