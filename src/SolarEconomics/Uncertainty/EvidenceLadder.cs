namespace SolarEconomics;

/// <summary>The lowest and highest value that each rung of evidence allows: flows laid where they are worth least, then where they are worth most.</summary>
/// <remarks>Equation per interval: value = p·(g − x − c + d − s) + f·x, with import price p, export price f, generation g, export x, charge c,
/// discharge d and standby s. Import drops out: both bills hold it.</remarks>
internal sealed partial class EvidenceLadder
{
    // A battery's daily work where nothing is recorded of it: at most two full cycles, at worst a quarter lost. Common practice, no source.
    private const double CyclesPerDay = 2;
    private const double WorstLoss = 0.25;

    private readonly SiteRecords _records;
    private readonly EvidencePrices _prices;
    private readonly List<string> _doubtful = [];
    private readonly double[] _spread;

    internal EvidenceLadder(SiteRecords records, EvidencePrices prices)
    {
        _records = records;
        _prices = prices;
        _spread = new double[records.Grid.Count];
        for (var i = 0; i < _spread.Length; i++) _spread[i] = prices.Import[i] - prices.Export[i];
    }

    /// <summary>Sentences about counter readings that could not be true.</summary>
    internal IReadOnlyList<string> Doubtful => [.. _doubtful.Distinct(StringComparer.Ordinal)];

    /// <summary>The highest rung that the records reach.</summary>
    internal EvidenceRung Highest =>
        _records.Generation.All(g => g.Series.KnownTotalKwh <= 0) || _records.Generation.Count == 0 ? EvidenceRung.Counters
        : _records.Export is null || _records.Import is null ? EvidenceRung.IntervalGeneration
        : EvidenceRung.IntervalFlows;

    /// <summary>Bounds of the value at one rung, at most <see cref="Highest"/>, for a battery that nobody read: each unknown at its worst and at its best by itself, so that no flows need reach them.</summary>
    internal ValueEnds At(EvidenceRung rung)
    {
        if (!_records.GenerationIsBounded) return new ValueEnds(ExportAlone(), null);
        var (low, high) = GenerationTerm(rung);
        var ends = new ValueEnds(low, high);
        ends = ExportTerm(ends, rung);
        ends = UnrecordedBattery(ends, rung);
        var standby = 0.0;
        for (var i = 0; i < _records.Grid.Count; i++) standby += _prices.Import[i] * _records.StandbyKwh[i];
        return ends.Plus(-standby - _prices.RoundingSlack, -standby + _prices.RoundingSlack);
    }

    /// <summary>With nothing known of generation, what was exported was generated: at least that, no upper end.</summary>
    private double ExportAlone()
    {
        var sum = 0.0;
        if (_records.Export is { } export)
            for (var i = 0; i < _records.Grid.Count; i++) sum += _prices.Export[i] * export.Kwh[i];
        return sum;
    }

    private bool ExportIsKnown(int i, EvidenceRung rung) =>
        rung >= EvidenceRung.MonthlyTotals && _records.Export is { } export && export.Known[i];

    private (double Low, double High) GenerationTerm(EvidenceRung rung)
    {
        var slopes = (Low: new double[_records.Grid.Count], High: new double[_records.Grid.Count]);
        for (var i = 0; i < _records.Grid.Count; i++)
        {
            // Where export is unknown a kWh may have gone either way.
            var known = ExportIsKnown(i, rung);
            slopes.Low[i] = known ? _prices.Import[i] : Math.Min(_prices.Import[i], _prices.Export[i]);
            slopes.High[i] = known ? _prices.Import[i] : Math.Max(_prices.Import[i], _prices.Export[i]);
        }
        var (low, high) = (0.0, 0.0);
        foreach (var device in _records.Generation)
        {
            low += Dot(GenerationAtEnd(device, rung, slopes.Low, lowEnd: true), slopes.Low);
            high += Dot(GenerationAtEnd(device, rung, slopes.High, lowEnd: false), slopes.High);
        }
        return (low, high);
    }

    /// <summary>One device's AC generation per interval at an end of the range.</summary>
    private double[] GenerationAtEnd(GenerationRecord record, EvidenceRung rung, double[] worth, bool lowEnd)
    {
        var kwh = new double[_records.Grid.Count];
        var known = rung == EvidenceRung.Counters ? new bool[kwh.Length] : record.Series.Known;
        foreach (var gap in GapGroups.Of(record, known, rung == EvidenceRung.Counters, _records.Grid, _records.Site.Zone, _doubtful))
            Allotment.Lay(lowEnd ? gap.LowKwh : gap.HighKwh, gap.Intervals, record.CeilingKwh, worth, lowEnd, kwh);
        if (rung >= EvidenceRung.IntervalGeneration)
        {
            for (var i = 0; i < kwh.Length; i++) if (known[i]) kwh[i] = record.Series.Kwh[i];
        }
        else if (rung == EvidenceRung.MonthlyTotals)
        {
            foreach (var month in Months(i => known[i]))
                Allotment.Lay(month.Sum(i => record.Series.Kwh[i]), month, record.CeilingKwh, worth, lowEnd, kwh);
        }
        var toAc = lowEnd ? record.Device.ToAcLow : record.Device.ToAcHigh;
        for (var i = 0; i < kwh.Length; i++) kwh[i] *= toAc;
        return kwh;
    }

    private ValueEnds ExportTerm(ValueEnds ends, EvidenceRung rung)
    {
        if (rung < EvidenceRung.MonthlyTotals || _records.Export is not { } export) return ends;
        if (rung == EvidenceRung.IntervalFlows)
        {
            var exact = 0.0;
            for (var i = 0; i < export.Kwh.Length; i++) if (export.Known[i]) exact += _spread[i] * export.Kwh[i];
            return ends.Plus(-exact, -exact);
        }
        var room = new double[_records.Grid.Count];
        foreach (var device in _records.Generation)
        {
            for (var i = 0; i < room.Length; i++)
            {
                var interval = rung == EvidenceRung.IntervalGeneration && device.Series.Known[i];
                room[i] += device.Device.ToAcHigh * (interval ? device.Series.Kwh[i] : device.CeilingKwh[i]);
            }
        }
        for (var i = 0; i < room.Length; i++) room[i] += BatteryRoomKwh;
        var low = LayByMonth(export, room, _spread, ascending: false);
        var high = LayByMonth(export, room, _spread, ascending: true);
        return ends.Plus(-low, -high);
    }

    /// <summary>The most that a battery can take or give in one interval: its usable energy in an hour; without a rating, a tenth more than the most on record.</summary>
    private double BatteryRoomKwh => _records.BatteryKwh > 0 ? _records.BatteryKwh * _records.Grid.StepHours : 1.1 * Math.Max(MostKwh(_records.Charge), MostKwh(_records.Discharge));

    private static double MostKwh(GridSeries? series) => series is null || series.Kwh.Length == 0 ? 0 : series.Kwh.Max();

    /// <summary>Charged at the cheapest price of the day and discharged at the dearest, or the other way round with all that can be lost; where export is not known, discharge may have been exported.</summary>
    private ValueEnds UnrecordedBattery(ValueEnds ends, EvidenceRung rung)
    {
        var perDay = (int)Math.Round(24 / _records.Grid.StepHours);
        var charged = CyclesPerDay * _records.BatteryKwh;
        var (low, high) = (0.0, 0.0);
        for (var from = 0; from < _records.Grid.Count; from += perDay)
        {
            var (cheapest, dearest) = (double.MaxValue, double.MinValue);
            var (least, most) = (double.MaxValue, double.MinValue);
            for (var i = from; i < Math.Min(from + perDay, _records.Grid.Count); i++)
            {
                var (import, export) = (_prices.Import[i], ExportIsKnown(i, rung) ? _prices.Import[i] : _prices.Export[i]);
                (cheapest, dearest) = (Math.Min(cheapest, import), Math.Max(dearest, import));
                (least, most) = (Math.Min(least, Math.Min(import, export)), Math.Max(most, Math.Max(import, export)));
            }
            high += Math.Max(0, charged * Math.Max(most - cheapest, ((1 - WorstLoss) * most) - cheapest));
            low += Math.Min(0, charged * Math.Min(least - dearest, ((1 - WorstLoss) * least) - dearest));
        }
        return ends.Plus(low, high);
    }

    private double LayByMonth(GridSeries series, double[] room, double[] worth, bool ascending)
    {
        var laid = new double[room.Length];
        var value = 0.0;
        foreach (var month in Months(i => series.Known[i]))
        {
            var homeless = Allotment.Lay(month.Sum(i => series.Kwh[i]), month, room, worth, ascending, laid);
            // More than the room can hold means that a rating is too low: the rest counts at the far end, so that the range stays true.
            value += homeless * (ascending ? month.Min(i => worth[i]) : month.Max(i => worth[i]));
        }
        return value + Dot(laid, worth);
    }

    private IEnumerable<List<int>> Months(Func<int, bool> wanted)
    {
        var month = new List<int>();
        for (var i = 0; i < _prices.MonthOf.Length; i++)
        {
            if (i > 0 && _prices.MonthOf[i] != _prices.MonthOf[i - 1] && month.Count > 0)
            {
                yield return month;
                month = [];
            }
            if (wanted(i)) month.Add(i);
        }
        if (month.Count > 0) yield return month;
    }

    private static double Dot(double[] a, double[] b)
    {
        var sum = 0.0;
        for (var i = 0; i < a.Length; i++) sum += a[i] * b[i];
        return sum;
    }
}
