using NodaTime;

namespace SolarEconomics;

/// <summary>A home's readings laid on a billing grid over whole billing days.</summary>
internal sealed record BilledReadings(IntervalGrid Grid, DateSpan Days, DateTimeZone BillingZone, double[] ImportKwh, double[] ExportKwh,
    double CoveredShare, bool IsEstimate)
{
    /// <exception cref="RecordException">The readings hold no import of energy.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The last day is not after the first.</exception>
    internal static BilledReadings Of(Readings readings, DateTimeZone zone, LocalDate? firstDay, LocalDate? endDay, DateTimeZone? meterClock, bool estimateWhereMissing)
    {
        var import = BillColumn.Channels(readings, FlowKind.Import);
        if (import.Count == 0) throw Throw.NoImportReadings(readings);
        var export = BillColumn.Channels(readings, FlowKind.Export);
        var start = import.Min(c => c.Start!.Value);
        var end = import.Max(c => c.End!.Value);
        var billingZone = meterClock ?? BillColumn.MeterClock(start, end, zone);
        var from = firstDay ?? start.InZone(billingZone).Date;
        var to = endDay ?? (end - Duration.Epsilon).InZone(billingZone).Date.PlusDays(1);
        if (to <= from) throw Throw.NoBillingDay(from, to);
        var grid = BillColumn.Grid(import.Concat(export), from, to, billingZone);
        var taken = new BillColumn(grid, import);
        var sent = new BillColumn(grid, export);
        if (export.Count > 0) taken.CoverOnlyWith(sent);
        var share = taken.CoveredShare;
        var estimate = estimateWhereMissing && share is > 0 and < 1;
        if (estimate)
        {
            taken.FillByTimeOfDay(billingZone);
            if (export.Count > 0) sent.FillByTimeOfDay(billingZone);
        }
        return new BilledReadings(grid, new DateSpan(from, to), billingZone, taken.Kwh, sent.Kwh, share, estimate);
    }
}
