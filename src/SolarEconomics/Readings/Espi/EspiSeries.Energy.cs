using System.Globalization;

namespace SolarEconomics;

/// <content>What the numbers of a series are: states of a register, amounts of their own interval, or power during it.</content>
internal sealed partial class EspiSeries
{
    /// <summary>What goes down more often than this is no register, whatever its type says. Share of steps. Common practice, no source.</summary>
    private const double MostFalls = 0.02;

    private ColumnEnergy Energy(EnergyUnit? unit, EspiEntry? type, string name, bool known, ProblemList problems)
    {
        if (known && !unit!.IsPower && IsRegister(type, name, problems))
            return CounterColumn.ToEnergy(_table, Values, new ValueColumn(0, new ColumnMeaning(name, FlowKind.Unknown, "kWh", ColumnKind.Counter, "")), problems);
        var starts = _table.StartMs;
        var ends = new long[starts.Length];
        var kwh = _table.Values(Values).ToArray();
        var quality = _table.Quality(Values).ToArray();
        var seconds = _table.Values(Seconds);
        for (var i = 0; i < ends.Length; i++)
        {
            ends[i] = starts[i] + ((long)seconds[i] * 1000);
            if (known && unit!.IsPower) kwh[i] *= seconds[i] / 3600;
        }
        // Power that holds until the next one begins is counted until then; an amount of energy cannot be cut.
        var overlap = IntervalOverlaps.Cut(starts, ends);
        if (known && unit!.IsPower) overlap.CutEnergy(kwh);
        overlap.Mark(quality);
        overlap.Report(name, kwh, isCut: known && unit!.IsPower, _table.LineOf, problems);
        return new ColumnEnergy(TimeAxis.OfMilliseconds(starts, ends), kwh, quality);
    }

    /// <summary>Whether the values are states of a register: as the type says, and as the numbers bear out.</summary>
    private bool IsRegister(EspiEntry? type, string name, ProblemList problems)
    {
        var code = type?.Fields.GetValueOrDefault("accumulationBehaviour");
        if (!EspiCodes.IsRegister(code)) return false;
        var values = _table.Values(Values);
        var falls = 0;
        for (var i = 1; i < values.Length; i++)
            if (values[i] < values[i - 1]) falls++;
        if (falls <= Math.Max(1, MostFalls * (values.Length - 1))) return true;
        problems.Doubtful(type!.LineOf("accumulationBehaviour"), 0, code!,
            string.Create(CultureInfo.InvariantCulture, $"\"{name}\" called {EspiCodes.AccumulationWord(code)} (accumulationBehaviour {code}), a register that only rises, while its values fall {falls} times in {values.Length}"),
            "values that rise, or delta data (4); they were counted as the energy of each interval");
        return false;
    }
}
