namespace SolarEconomics;

/// <content>Flows that reach the ends of each rung.</content>
internal sealed partial class EvidenceLadder
{
    /// <summary>Whether the ends of a rung are reached by flows that are laid here.</summary>
    /// <remarks>On the lowest rung a battery is held by its days, on the others, where it was read, by its months or intervals. A battery that nobody read beside other records would
    /// have to meet its days and their months together: there the ends stay bounds.</remarks>
    internal bool IsAttained(EvidenceRung rung) =>
        (rung == EvidenceRung.Counters && _records.GenerationIsBounded) || !HasBattery || BatteryIsRead;

    private bool HasBattery => _records.BatteryKwh > 0 || _records.Charge is not null || _records.Discharge is not null;

    private bool BatteryIsRead => _records.Charge is not null && _records.Discharge is not null;

    /// <summary>The flows of the lowest and of the highest value that a rung's records allow; <see langword="null"/> where only a bound is known.</summary>
    internal RungFlows? FlowsAt(EvidenceRung rung)
    {
        if (!IsAttained(rung)) return null;
        if (rung == EvidenceRung.Counters && _records.GenerationIsBounded) return new RungFlows(CountersEnd(lowEnd: true), CountersEnd(lowEnd: false), 0, 0);
        var program = ProgramOf(rung);
        MixedFlows? low = null, high = null;
        Parallel.Invoke(
            () => low = new PatternMix(program, lowEnd: true).Solve(),
            () => high = _records.GenerationIsBounded ? new PatternMix(program, lowEnd: false).Solve() : null);
        return new RungFlows(SetOf(program, low!), high is null ? null : SetOf(program, high), Math.Max(low!.MissedKwh, high?.MissedKwh ?? 0), Math.Max(low.Doubt, high?.Doubt ?? 0));
    }

    /// <summary>Lowest and highest value of a rung by the prices of the intervals: of the flows at its ends where they are laid, else bounds.</summary>
    internal ValueEnds EndsOf(EvidenceRung rung) => FlowsAt(rung) is { } flows ? EndsOf(flows) : At(rung);

    /// <summary>Between what flows and what their search left open the value must lie.</summary>
    internal ValueEnds EndsOf(RungFlows flows) =>
        new(WorthOf(flows.Low) - flows.Doubt, flows.High is { } high ? WorthOf(high) + flows.Doubt : null);

    /// <summary>What flows are worth by the prices of their intervals, before rounding.</summary>
    private double WorthOf(EnergySet flows)
    {
        var sum = 0.0;
        for (var i = 0; i < _records.Grid.Count; i++)
        {
            var kept = flows.GenerationKwh[i] - flows.ExportKwh[i] - flows.ChargeKwh[i] + flows.DischargeKwh[i] - flows.StandbyKwh[i];
            sum += (_prices.Import[i] * kept) + (_prices.Export[i] * flows.ExportKwh[i]);
        }
        return sum;
    }

    private EnergySet SetOf(EndsProgram program, MixedFlows mixed)
    {
        var count = _records.Grid.Count;
        var (generation, export, charge, discharge) = (new double[count], new double[count], new double[count], new double[count]);
        var needed = new double[count];
        var byDevice = program.Generation.ToDictionary(g => g.Device, _ => new double[count], StringComparer.Ordinal);
        foreach (var block in mixed.Blocks)
        {
            block.Export.CopyTo(export, block.From);
            block.Charge.CopyTo(charge, block.From);
            block.Discharge.CopyTo(discharge, block.From);
            block.Import.CopyTo(needed, block.From);
            for (var k = 0; k < program.Generation.Count; k++)
            {
                block.Generation[k].CopyTo(byDevice[program.Generation[k].Device], block.From);
                for (var n = 0; n < block.Count; n++) generation[block.From + n] += block.Generation[k][n];
            }
        }
        _ = byDevice.Remove(Unexplained);
        return new EnergySet(_records.Grid, generation, ImportAround(needed), export, charge, discharge, _records.StandbyKwh) { ByDevice = byDevice };
    }

    /// <summary>Import that is needed in each interval, and the rest of each month's import in the shape of the record: it is use in both bills.</summary>
    private double[] ImportAround(double[] needed)
    {
        var kwh = Import();
        for (var i = 0; i < kwh.Length; i++) if (!ImportIsKnown(i)) kwh[i] = Math.Max(kwh[i], needed[i]);
        foreach (var month in Months(ImportIsKnown))
        {
            var recorded = month.Sum(i => kwh[i]);
            var share = recorded > 0 ? Math.Max(0, recorded - month.Sum(i => needed[i])) / recorded : 0;
            foreach (var i in month) kwh[i] = needed[i] + (share * kwh[i]);
        }
        return kwh;
    }
}
