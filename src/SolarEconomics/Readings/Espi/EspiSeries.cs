namespace SolarEconomics;

/// <summary>The readings of one meter reading, gathered from its interval blocks.</summary>
internal sealed class EspiSeries(EspiEntry entry)
{
    private const int Values = 0;
    private const int Seconds = 1;
    private const int Costs = 2;
    private const long LastSecond = 7_258_118_400;

    private readonly IntervalTable _table = new(3, 1024);
    private bool _hasCost;

    internal EspiEntry Entry => entry;

    internal void Take(EspiReading reading, ProblemList problems)
    {
        if (reading.Start is not { } start || start is < 0 or >= LastSecond || reading.Duration is not (>= 0 and <= 400 * 86_400L) || reading.Value is not { } value)
        {
            problems.Lost(reading.Line, 0, reading.RawValue, reading.Fault ?? "an interval reading without a usable start, duration and value", "start in seconds since 1970, duration in seconds, and a value as a number; it was not counted");
            return;
        }
        var row = _table.Add(start * 1000, reading.Line);
        _table.Set(row, Values, value, reading.Quality);
        _table.Set(row, Seconds, reading.Duration.Value, Quality.Good);
        if (reading.Cost is not { } cost) return;
        _hasCost = true;
        _table.Set(row, Costs, EspiCodes.Money(cost), Quality.Good);
    }

    internal Channel ToChannel(EspiEntry? meter, EspiEntry? type, EspiEntry? point, int seriesInFile, string file, ProblemList problems)
    {
        var fields = type?.Fields ?? [];
        var multiplier = EspiCodes.Multiplier(fields);
        var unit = EspiCodes.UnitOf(fields.GetValueOrDefault("uom"));
        var electric = IsElectricity(fields, point);
        if (!electric) problems.Note(0, 0, "", "readings of something other than electricity", "electric energy; they are kept and counted nowhere");
        else if (multiplier is null || unit is null) problems.Lost(0, 0, "", Why(fields, multiplier), "electric energy in Wh (uom 72); the readings are kept and counted nowhere");
        var known = multiplier is not null && unit is { IsActiveEnergy: true } && electric;
        if (known) _table.Scale(Values, v => EspiCodes.Kilo(v, multiplier!.Value));
        var direction = fields.GetValueOrDefault("flowDirection");
        var name = NameOf(meter, direction, seriesInFile);
        var extra = _table.PutInOrder([name, null, null], problems);
        var energy = Energy(unit, fields, name, known, problems);
        return new Channel(name, known ? EspiCodes.FlowOf(direction) : FlowKind.Unknown, energy.Times, energy.Kwh, energy.Quality)
        {
            Unit = known ? unit!.Name : unit is { IsActiveEnergy: false } ? unit.Name : "unknown",
            Meter = point?.Self ?? point?.Title,
            Point = MeasurementPoint.Meter,
            File = file,
            ExtraReadings = extra[Values],
            Resets = energy.Resets,
            CounterStates = energy.States,
            Costs = _hasCost && energy.Kwh.Length == _table.Rows ? _table.Values(Costs).ToArray() : [],
            CostCurrency = _hasCost ? EspiCodes.CurrencyOf(fields.GetValueOrDefault("currency")) : null,
        };
    }

    private ColumnEnergy Energy(EnergyUnit? unit, Dictionary<string, string> fields, string name, bool known, ProblemList problems)
    {
        // 3 is cumulative: each value is the state of a counter. Anything else is the amount of its own interval.
        if (known && EspiCodes.AccumulationWord(fields.GetValueOrDefault("accumulationBehaviour")) is "cumulative")
            return CounterColumn.ToEnergy(_table, Values, new ValueColumn(0, new ColumnMeaning(name, FlowKind.Unknown, "kWh", ColumnKind.Counter, "")), problems);
        var starts = _table.StartMs;
        var ends = new long[starts.Length];
        var kwh = _table.Values(Values).ToArray();
        var quality = _table.Quality(Values).ToArray();
        var seconds = _table.Values(Seconds);
        for (var i = 0; i < ends.Length; i++)
        {
            ends[i] = starts[i] + ((long)seconds[i] * 1000);
            if (i + 1 < ends.Length && starts[i + 1] < ends[i]) ends[i] = starts[i + 1];
            if (known && unit!.IsPower) kwh[i] *= seconds[i] / 3600;
            if (kwh[i] < 0) quality[i] |= Quality.Negative;
        }
        return new ColumnEnergy(TimeAxis.OfMilliseconds(starts, ends), kwh, quality);
    }

    private static bool IsElectricity(Dictionary<string, string> fields, EspiEntry? point)
    {
        // Commodity 1 and 2 are electricity; a usage point of kind 0 is electric.
        if (fields.TryGetValue("commodity", out var commodity) && commodity is not ("0" or "1" or "2")) return false;
        return point is null || !point.Fields.TryGetValue("kind", out var kind) || string.Equals(kind, "0", StringComparison.Ordinal);
    }

    private static string Why(Dictionary<string, string> fields, int? multiplier) =>
        multiplier is null ? $"the multiplier \"{ProblemList.Shorten(fields["powerOfTenMultiplier"])}\"" : $"the unit code \"{ProblemList.Shorten(fields.GetValueOrDefault("uom", ""))}\"";

    private string NameOf(EspiEntry? meter, string? direction, int seriesInFile)
    {
        var name = string.IsNullOrWhiteSpace(meter?.Title) ? EspiCodes.DirectionName(direction) : meter.Title;
        return seriesInFile == 1 ? name : $"{name} ({meter?.Self ?? entry.Up ?? entry.Self ?? EspiCodes.DirectionName(direction)})";
    }
}
