namespace SolarEconomics.Charts;

/// <summary>Draws counted into bars of equal width that meet at zero, so that no bar both gains and loses.</summary>
internal sealed class ChanceBars
{
    /// <summary>The outermost draws on each side are left out of the picture: one far draw would press all others together.</summary>
    private const double LeftOut = 0.005;

    internal ChanceBars(Chances chances, int bars)
    {
        var values = chances.Values;
        var (low, high) = (values.Percentile(LeftOut), values.Percentile(1 - LeftOut));
        Width = Math.Max((high - low) / bars, 0.01);
        var first = (int)Math.Floor(low / Width);
        var count = Math.Max(1, (int)Math.Ceiling(high / Width) - first);
        From = first * Width;
        Shares = new double[count];
        foreach (var value in values.Values)
        {
            var bar = (int)Math.Floor((value - From) / Width);
            if (bar >= 0 && bar < count) Shares[bar] += 1.0 / values.Count;
        }
    }

    internal double Width { get; }

    internal double From { get; }

    internal double To => From + (Width * Shares.Length);

    /// <summary>Share of all draws in each bar.</summary>
    internal double[] Shares { get; }

    internal double Middle(int bar) => From + (Width * (bar + 0.5));
}
