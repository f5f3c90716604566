namespace SolarEconomics;

/// <summary>Sums over ranges of intervals of one place, each in constant time. Unit: kWh, at the measurement point.</summary>
internal sealed class RunningSums
{
    private readonly double[] _known;
    private readonly double[] _missingCeiling;
    private readonly double[] _ceiling;

    internal RunningSums(GenerationRecord record, bool[] known)
    {
        _known = new double[known.Length + 1];
        _missingCeiling = new double[known.Length + 1];
        _ceiling = new double[known.Length + 1];
        for (var i = 0; i < known.Length; i++)
        {
            _known[i + 1] = _known[i] + (known[i] ? record.Series.Kwh[i] : 0);
            _missingCeiling[i + 1] = _missingCeiling[i] + (known[i] ? 0 : record.CeilingKwh[i]);
            _ceiling[i + 1] = _ceiling[i] + record.CeilingKwh[i];
        }
    }

    internal double Known(int from, int to) => Between(_known, from, to);

    internal double MissingCeiling(int from, int to) => Between(_missingCeiling, from, to);

    internal double Ceiling(int from, int to) => Between(_ceiling, from, to);

    private static double Between(double[] sums, int from, int to) => to > from ? sums[to] - sums[from] : 0;
}
