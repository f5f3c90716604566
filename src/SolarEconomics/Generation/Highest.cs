namespace SolarEconomics;

/// <summary>Where a function of one variable is highest: unlike strings and a limit on current make several peaks, so each that a walk over all places sees is looked at closely.</summary>
internal static class Highest
{
    private const int Places = 60;
    private const int Rounds = 80;

    internal static double Of(Func<double, double> at, double low, double high)
    {
        Span<double> seen = stackalloc double[Places + 1];
        double Place(int i) => low + ((high - low) * i / Places);
        for (var i = 0; i <= Places; i++) seen[i] = at(Place(i));
        var (best, highest) = (low, double.MinValue);
        for (var i = 0; i <= Places; i++)
        {
            if ((i > 0 && seen[i] < seen[i - 1]) || (i < Places && seen[i] < seen[i + 1])) continue;
            var peak = Closely(at, Place(Math.Max(0, i - 1)), Place(Math.Min(Places, i + 1)));
            foreach (var x in (ReadOnlySpan<double>)[Place(i), peak])
                if (at(x) is var y && y > highest) (best, highest) = (x, y);
        }
        return best;
    }

    private static double Closely(Func<double, double> at, double from, double to)
    {
        for (var round = 0; round < Rounds; round++)
        {
            var (a, b) = (from + ((to - from) / 3), to - ((to - from) / 3));
            if (at(a) < at(b)) from = a;
            else to = b;
        }
        return (from + to) / 2;
    }
}
