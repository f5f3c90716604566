using NodaTime;

namespace SolarEconomics;

/// <summary>A home's readings laid on a billing grid over whole billing days.</summary>
internal sealed record BilledReadings(IntervalGrid Grid, DateSpan Days, DateTimeZone BillingZone, MeteredEnergy Energy, double CoveredShare)
{
    internal bool IsEstimate { get; init; }

    internal IReadOnlyList<string> Notes { get; init; } = [];

    /// <exception cref="RecordException">The readings hold no import of energy, or several meters and none is chosen, or no day is left between first and last.</exception>
    internal static BilledReadings Of(BilledSpan asked, Readings readings, DateTimeZone zone, bool controlledLoadIsPriced)
    {
        var channels = BilledChannels.Of(readings, asked.Meter, asked.ControlledLoad, controlledLoadIsPriced);
        var import = channels.Import.Concat(channels.ControlledLoad).ToList();
        var start = import.Min(c => c.Start!.Value);
        var end = import.Max(c => c.End!.Value);
        var billingZone = asked.BillingZone ?? import.Select(c => c.Clock).OfType<DateTimeZone>().FirstOrDefault() ?? BillColumn.MeterClock(start, end, zone);
        var from = asked.From ?? start.InZone(billingZone).Date;
        var to = asked.To ?? (end - Duration.Epsilon).InZone(billingZone).Date.PlusDays(1);
        if (to <= from) throw Throw.NoBillingDay(from, to);
        var grid = BillColumn.Grid(import.Concat(channels.Export), from, to, billingZone);
        BillColumn[] columns = [new(grid, channels.Import), new(grid, channels.Export), new(grid, channels.ControlledLoad)];
        BillColumn.CoverTogether(columns);
        var share = columns[0].CoveredShare;
        var estimate = asked.EstimateWhereMissing && share is > 0 and < 1;
        if (estimate)
            foreach (var column in columns) column.FillByTimeOfDay(billingZone);
        var energy = new MeteredEnergy(columns[0].Kwh, columns[1].Kwh) { ControlledLoadKwh = channels.ControlledLoad.Count > 0 ? columns[2].Kwh : [] };
        return new BilledReadings(grid, new DateSpan(from, to), billingZone, energy, share) { IsEstimate = estimate, Notes = channels.Notes };
    }
}
