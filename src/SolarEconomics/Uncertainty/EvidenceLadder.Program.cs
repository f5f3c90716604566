namespace SolarEconomics;

/// <content>What monthly totals and interval generation leave open, as a program.</content>
internal sealed partial class EvidenceLadder
{
    // No meter tells so little: sums of such size would only spoil the arithmetic.
    private const double NothingKwh = 1e-6;

    // The place of generation that no device accounts for.
    private const string Unexplained = "";

    /// <summary>The program of a rung above counters. Below interval flows all is told by month, but for generation on the third rung.</summary>
    internal EndsProgram ProgramOf(EvidenceRung rung)
    {
        if (rung == EvidenceRung.IntervalFlows || !_records.GenerationIsBounded) return ProgramOfIntervals();
        var program = new EndsProgram(_prices, _records.StandbyKwh);
        foreach (var record in _records.Generation) program.Generation.Add(OpenGenerationOf(program, record, rung));
        var room = new double[_records.Grid.Count];
        Array.Fill(room, BatteryRoomKwh);
        Open(program, program.Charge, _records.Charge, room, mayFallShort: false);
        Open(program, program.Discharge, _records.Discharge, room, mayFallShort: false);
        // Nothing can be exported but what was made or discharged, nor need more be imported than goes somewhere.
        for (var i = 0; i < room.Length; i++)
            room[i] = program.Discharge.HighKwh[i] + program.Generation.Sum(g => g.ToAcHigh * g.Flow.HighKwh[i]);
        Open(program, program.Export, _records.Export, room, mayFallShort: false);
        for (var i = 0; i < room.Length; i++)
            room[i] = program.Charge.HighKwh[i] + _records.StandbyKwh[i];
        Open(program, program.Import, _records.Import, room, mayFallShort: true);
        return program;
    }

    /// <summary>The program of interval flows: what was read is fixed, what was not may be anything that there is room for.</summary>
    private EndsProgram ProgramOfIntervals()
    {
        // Standby is a rating, not a reading: flows that were read need not leave room for it.
        var program = new EndsProgram(_prices, new double[_records.Grid.Count]);
        foreach (var record in _records.Generation) program.Generation.Add(OpenGenerationOf(program, record, EvidenceRung.IntervalFlows));
        var unexplained = new OpenGeneration(Unexplained, _records.Grid.Count, 1, 1);
        var battery = BatteryRoomKwh;
        for (var i = 0; i < _records.Grid.Count; i++)
        {
            Fix(program.Charge, _records.Charge, i, battery);
            Fix(program.Discharge, _records.Discharge, i, battery);
            var made = program.Generation.Sum(g => g.ToAcHigh * g.Flow.HighKwh[i]);
            Fix(program.Export, _records.Export, i, made + program.Discharge.HighKwh[i]);
            Fix(program.Import, _records.Import, i, program.Charge.HighKwh[i] + program.Export.HighKwh[i]);
            // What left the home must have come from somewhere: where the readings of an interval contradict each other, generation makes up for it.
            var (export, charge) = (program.Export.LowKwh[i], program.Charge.LowKwh[i]);
            var (discharge, import) = (program.Discharge.HighKwh[i], program.Import.HighKwh[i]);
            var missing = Math.Max(export - discharge, Math.Max(charge - import, export + charge - discharge - import)) - made;
            unexplained.Flow.LowKwh[i] = unexplained.Flow.HighKwh[i] = Math.Max(0, missing);
        }
        program.Generation.Add(unexplained);
        return program;
    }

    private static void Fix(OpenFlow flow, GridSeries? series, int i, double room) =>
        (flow.LowKwh[i], flow.HighKwh[i]) = series?.Known[i] == true ? (series.Kwh[i], series.Kwh[i]) : (0, room);

    private OpenGeneration OpenGenerationOf(EndsProgram program, GenerationRecord record, EvidenceRung rung)
    {
        var open = new OpenGeneration(record.Device.Name, _records.Grid.Count, record.Device.ToAcLow, record.Device.ToAcHigh);
        var byInterval = rung >= EvidenceRung.IntervalGeneration;
        for (var i = 0; i < _records.Grid.Count; i++)
        {
            var isKnown = byInterval && record.Series.Known[i];
            // An interval may be covered in part: that part is certain.
            open.Flow.LowKwh[i] = byInterval ? record.Series.Kwh[i] : 0;
            open.Flow.HighKwh[i] = isKnown ? record.Series.Kwh[i] : record.CeilingKwh[i];
        }
        foreach (var gap in GapGroups.Of(record, record.Series.Known, onePair: false, _records.Grid, _records.Site.Zone, _doubtful))
            Sum(program, open.Flow, gap.Intervals, gap.LowKwh, gap.HighKwh);
        if (byInterval) return open;
        foreach (var month in Months(i => record.Series.Known[i]))
        {
            var kwh = month.Sum(i => record.Series.Kwh[i]);
            Sum(program, open.Flow, month, kwh, kwh);
        }
        return open;
    }

    /// <summary>A metered flow by its months; where it was not read, anything that there is room for.</summary>
    private void Open(EndsProgram program, OpenFlow flow, GridSeries? series, double[] room, bool mayFallShort)
    {
        for (var i = 0; i < room.Length; i++) flow.HighKwh[i] = room[i];
        if (series is null) return;
        foreach (var month in Months(i => series.Known[i]))
        {
            var kwh = month.Sum(i => series.Kwh[i]);
            if (kwh < NothingKwh)
            {
                foreach (var i in month) flow.HighKwh[i] = 0;
                continue;
            }
            foreach (var i in month) flow.HighKwh[i] = Math.Min(room[i], kwh);
            Sum(program, flow, month, mayFallShort ? 0 : kwh, kwh);
        }
    }

    private static void Sum(EndsProgram program, OpenFlow flow, IReadOnlyList<int> intervals, double lowKwh, double highKwh)
    {
        var sum = program.AddSum(lowKwh, highKwh);
        foreach (var i in intervals) flow.SumOf[i] = sum;
    }
}
