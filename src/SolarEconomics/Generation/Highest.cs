namespace SolarEconomics;

/// <summary>Where a function of one variable is highest: looked for everywhere first, as unlike strings can make two peaks, then closely.</summary>
internal static class Highest
{
    private const int Places = 60;
    private const int Rounds = 80;

    internal static double Of(Func<double, double> at, double low, double high)
    {
        var (best, highest) = (low, at(low));
        for (var i = 1; i <= Places; i++)
        {
            var x = low + ((high - low) * i / Places);
            if (at(x) is var y && y > highest) (best, highest) = (x, y);
        }
        var (from, to) = (Math.Max(low, best - ((high - low) / Places)), Math.Min(high, best + ((high - low) / Places)));
        for (var round = 0; round < Rounds; round++)
        {
            var (a, b) = (from + ((to - from) / 3), to - ((to - from) / 3));
            if (at(a) < at(b)) from = a;
            else to = b;
        }
        var middle = (from + to) / 2;
        return at(middle) >= highest ? middle : best;
    }
}
