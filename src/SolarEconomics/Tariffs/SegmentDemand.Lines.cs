using NodaTime;

namespace SolarEconomics;

/// <content>Measuring and pricing the demand of some days.</content>
internal sealed partial class SegmentDemand
{
    private void AddLine(DateSpan days, BillRun run, List<BillLine> lines)
    {
        // A day on which nothing counts, such as a weekend, has no demand, and no least one either.
        var highest = new decimal?[_charge.EachDay ? _context.Days.Days : 1];
        foreach (var (first, count, day) in _averages)
        {
            if (!days.Contains(_context.Days.Start.PlusDays(day))) continue;
            ref var top = ref highest[_charge.EachDay ? day : 0];
            top = Math.Max(top ?? 0, Measured(first, count, run));
        }
        if (highest.Max() is not { } most) return;
        var earlier = run.Carry.DemandsKw(_charge.Name);
        var remembered = earlier.Skip(Math.Max(0, earlier.Count - _charge.RatchetBills)).Append(_charge.EarlierKw).Max();
        var floor = Math.Max(_charge.MinimumKw, remembered * _charge.RatchetShare);
        var season = _context.Tariff.Seasons.FirstOrDefault(s => string.Equals(s.Name, _charge.RatchetSeason, StringComparison.Ordinal));
        if (season is null || season.Contains(days.Start)) earlier.Add(most);
        var charged = highest.OfType<decimal>().Select(kw => Math.Max(kw, floor)).ToArray();
        var periods = TimesCharged(days);
        var unit = RuleWords.Unit(_charge.Unit) + " " + RuleWords.Unit(_charge.EachDay ? ChargePeriod.Day : _charge.Per);
        if (_charge.Steps.Count == 0)
        {
            lines.Add(BillWriter.Line(_context, _charge, _charge.Name, charged.Sum() * periods, unit, _charge.PerKw, 1,
                RuleWords.Demand(_charge, most, floor, _context.Tariff)));
            return;
        }
        var inSteps = new decimal[_charge.Steps.Count];
        foreach (var kw in charged) _charge.Blocks.Share(kw, 1, inSteps);
        for (var i = 0; i < inSteps.Length; i++)
            if (inSteps[i] != 0)
                lines.Add(BillWriter.Line(_context, _charge, RuleWords.Step(_charge, i), inSteps[i] * periods, unit, _charge.Steps[i].Price, 1,
                    RuleWords.Demand(_charge, most, floor, _context.Tariff)));
    }

    /// <summary>The demand of one average as the charge measures it: kW, kVA, or kW lifted to a share of the kVA.</summary>
    private decimal Measured(int first, int count, BillRun run)
    {
        var hours = count * _context.Ticks.Step / 3600.0;
        var kw = BandSums.Total(run.ImportKwh.Slice(first, count)) / hours;
        if (run.ReactiveKvarh.IsEmpty) return (decimal)kw;
        var kvar = BandSums.Total(run.ReactiveKvarh.Slice(first, count)) / hours;
        var kva = Math.Sqrt((kw * kw) + (kvar * kvar));
        return _charge.Unit == DemandUnit.KilovoltAmpere ? (decimal)kva : DemandCharge.BilledKw((decimal)kw, (decimal)kva, _charge.KvaShare, 0, 0);
    }
}
