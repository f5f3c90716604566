using System.Globalization;

namespace SolarEconomics;

/// <summary>The readings of one meter reading, gathered from its interval blocks.</summary>
internal sealed partial class EspiSeries(EspiEntry entry)
{
    private const int Values = 0;
    private const int Seconds = 1;
    private const int Costs = 2;

    /// <summary>1 where a reading states a quality of its own.</summary>
    private const int OwnQuality = 3;
    private const long LastSecond = 7_258_118_400;
    private const long LongestSeconds = 400 * 86_400L;

    private readonly IntervalTable _table = new(4, 1024);

    // Readings without a start or a duration of their own wait for the type, which may stand behind them and tells how long an interval is.
    private readonly List<EspiReading> _waiting = [];
    private bool _hasCost;

    internal EspiEntry Entry => entry;

    internal void Take(EspiReading reading, ProblemList problems)
    {
        if (reading is { Value: not null, Fault: null } && (reading.Start is null || reading.Duration is null)) _waiting.Add(reading);
        else Take(reading, reading.Start, reading.Duration, problems);
    }

    internal Channel ToChannel(EspiEntry? meter, EspiEntry? type, EspiEntry? point, int seriesInFile, string file, ProblemList problems)
    {
        var fields = type?.Fields ?? [];
        TakeWaiting(fields, problems);
        TakeDefaultQuality(fields);
        var multiplier = EspiCodes.Multiplier(fields);
        var unit = EspiCodes.UnitOf(fields.GetValueOrDefault("uom"));
        var electric = IsElectricity(fields, point);
        if (!electric) problems.Note(type?.LineOf("commodity") ?? 0, 0, fields.GetValueOrDefault("commodity", ""), "readings of something other than electricity", "electric energy; they are kept and counted nowhere");
        else if (type is not null && (multiplier is null || unit is null)) ReportUnit(type, multiplier is null ? "powerOfTenMultiplier" : "uom", problems);
        var known = multiplier is not null && unit is { IsActiveEnergy: true } && electric;
        if (known) _table.Scale(Values, v => EspiCodes.Kilo(v, multiplier!.Value));
        var direction = fields.GetValueOrDefault("flowDirection");
        var name = NameOf(meter, direction, seriesInFile);
        var extra = _table.PutInOrder([name, null, null, null], problems);
        var energy = Energy(unit, type, name, known, problems);
        var flow = known ? EspiCodes.FlowOf(direction) : FlowKind.Unknown;
        if (known) Doubts.FlagMetered(energy, flow, name, problems);
        else Negatives.Flag(energy, flow, name, 0, problems);
        return new Channel(name, flow, energy.Times, energy.Kwh, energy.Quality)
        {
            Unit = known ? unit!.Name : unit is { IsActiveEnergy: false } ? unit.Name : "unknown",
            Meter = point?.Self ?? point?.Title,
            Point = MeasurementPoint.Meter,
            File = file,
            ExtraReadings = extra[Values],
            Resets = energy.Resets,
            CounterStates = energy.States,
            CounterEnds = energy.Ends,
            Costs = _hasCost && energy.Kwh.Length == _table.Rows ? _table.Values(Costs).ToArray() : [],
            CostCurrency = _hasCost ? EspiCodes.CurrencyOf(fields.GetValueOrDefault("currency")) : null,
        };
    }

    private void Take(EspiReading reading, long? startSecond, long? duration, ProblemList problems)
    {
        if (startSecond is not { } start || start is < 0 or >= LastSecond || duration is not (>= 0 and <= LongestSeconds) || reading.Value is not { } value)
        {
            problems.Lost(reading.Line, 0, reading.RawValue, reading.Fault ?? "an interval reading without a usable start, duration and value",
                "start in seconds since 1970, duration in seconds, and a value as a number; a start may follow from the block's, a duration from the type's intervalLength. It was not counted");
            return;
        }
        var row = _table.Add(start * 1000, reading.Line);
        _table.Set(row, Values, value, reading.Quality);
        _table.Set(row, Seconds, duration.Value, Quality.Good);
        _table.Set(row, OwnQuality, reading.HasQuality ? 1 : 0, Quality.Good);
        if (reading.Cost is not { } cost) return;
        _hasCost = true;
        _table.Set(row, Costs, EspiCodes.Money(cost), Quality.Good);
    }

    private void TakeWaiting(Dictionary<string, string> fields, ProblemList problems)
    {
        long? length = long.TryParse(fields.GetValueOrDefault("intervalLength"), NumberStyles.None, CultureInfo.InvariantCulture, out var seconds) && seconds is > 0 and <= LongestSeconds ? seconds : null;
        foreach (var reading in _waiting)
            Take(reading, reading.Start ?? (reading.Block.Start + (reading.Block.Place * length)), reading.Duration ?? length, problems);
        _waiting.Clear();
    }

    /// <summary>What the type says of the quality holds where a reading says nothing itself.</summary>
    private void TakeDefaultQuality(Dictionary<string, string> fields)
    {
        if (!fields.TryGetValue("defaultQuality", out var code) || EspiCodes.QualityOf(code) is not (var quality and not Quality.Good)) return;
        var own = _table.Values(OwnQuality);
        for (var row = 0; row < own.Length; row++)
            if (own[row] == 0) _table.Flag(row, Values, quality);
    }

    private static void ReportUnit(EspiEntry type, string field, ProblemList problems)
    {
        var raw = type.Fields.GetValueOrDefault(field, "");
        problems.Lost(type.LineOf(field), 0, raw, field is "uom" ? $"the unit code \"{ProblemList.Shorten(raw)}\"" : $"the multiplier \"{ProblemList.Shorten(raw)}\"",
            "electric energy in Wh (uom 72) and a power of ten from -12 to 9; the readings are kept and counted nowhere");
    }

    private static bool IsElectricity(Dictionary<string, string> fields, EspiEntry? point)
    {
        // Commodity 1 and 2 are electricity; a usage point of kind 0 is electric.
        if (fields.TryGetValue("commodity", out var commodity) && commodity is not ("0" or "1" or "2")) return false;
        return point is null || !point.Fields.TryGetValue("kind", out var kind) || string.Equals(kind, "0", StringComparison.Ordinal);
    }

    private string NameOf(EspiEntry? meter, string? direction, int seriesInFile)
    {
        var name = string.IsNullOrWhiteSpace(meter?.Title) ? EspiCodes.DirectionName(direction) : meter.Title;
        return seriesInFile == 1 ? name : $"{name} ({meter?.Self ?? entry.Up ?? entry.Self ?? EspiCodes.DirectionName(direction)})";
    }
}
