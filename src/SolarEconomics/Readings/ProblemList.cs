using System.Globalization;

namespace SolarEconomics;

/// <summary>Collects what is found in one file: the first hundred in full, of the rest the number and the energy, by severity.</summary>
internal sealed class ProblemList(string file)
{
    internal const int Shown = 100;
    private const int RawShown = 200;

    private readonly List<Problem> _problems = [];
    private readonly int[] _more = new int[3];
    private readonly double[] _moreKwh = new double[3];

    internal string File => file;

    internal void Note(int line, int column, string raw, string found, string expected, double uncountedKwh = 0) =>
        Add(line, column, raw, found, expected, Severity.Note, uncountedKwh);

    internal void Doubtful(int line, int column, string raw, string found, string expected, double uncountedKwh = 0) =>
        Add(line, column, raw, found, expected, Severity.Doubtful, uncountedKwh);

    internal void Lost(int line, int column, string raw, string found, string expected, double uncountedKwh = 0) =>
        Add(line, column, raw, found, expected, Severity.Lost, uncountedKwh);

    internal void Add(int line, int column, string raw, string found, string expected, Severity severity, double uncountedKwh)
    {
        if (_problems.Count < Shown)
        {
            _problems.Add(new Problem(file, line, column, Shorten(raw), found, expected, severity) { UncountedKwh = uncountedKwh });
            return;
        }
        _more[(int)severity]++;
        _moreKwh[(int)severity] += uncountedKwh;
    }

    internal IReadOnlyList<Problem> ToList()
    {
        var all = new List<Problem>(_problems);
        for (var severity = Severity.Note; severity <= Severity.Lost; severity++)
        {
            var more = _more[(int)severity];
            if (more == 0) continue;
            var kwh = _moreKwh[(int)severity];
            var found = string.Create(CultureInfo.InvariantCulture, $"{more} more like these, with {kwh:0.######} kWh that are in no total");
            all.Add(new Problem(file, 0, 0, "", found, "the first hundred to be mended first: mend them and read the file again", severity) { UncountedKwh = kwh });
        }
        return all;
    }

    internal static string Shorten(string raw)
    {
        var clean = raw.Length > RawShown ? raw[..(RawShown - 1)] + "…" : raw;
        return clean.Any(char.IsControl) || clean.Any(char.IsSurrogate)
            ? string.Create(clean.Length, clean, static (to, from) =>
            {
                for (var i = 0; i < to.Length; i++) to[i] = char.IsControl(from[i]) || char.IsSurrogate(from[i]) ? ' ' : from[i];
            })
            : clean;
    }
}
