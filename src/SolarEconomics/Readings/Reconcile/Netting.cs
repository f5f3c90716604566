namespace SolarEconomics;

/// <summary>Generation and use netted against each other interval by interval, as if both were even inside it.</summary>
/// <param name="SelfUseKwh">Generation used on site in the same interval.</param>
/// <param name="ImportKwh">Use beyond generation.</param>
/// <param name="ExportKwh">Generation beyond use.</param>
/// <remarks>Netting hides what happens inside an interval: self-use is overstated, import and export are understated, more so the longer the
/// interval. Compare two lengths to see by how much. Equation: self-use = Σ min(generation, use).</remarks>
public sealed record Netting(double SelfUseKwh, double ImportKwh, double ExportKwh)
{
    /// <summary>Nets two channels over the intervals that both have.</summary>
    /// <param name="generation">Generation of all arrays together.</param>
    /// <param name="use">Use on site, on the same intervals.</param>
    /// <exception cref="ArgumentException">The channels have other intervals.</exception>
    public static Netting Of(Channel generation, Channel use)
    {
        ArgumentNullException.ThrowIfNull(generation);
        ArgumentNullException.ThrowIfNull(use);
        if (!generation.Starts.SequenceEqual(use.Starts) || !generation.Ends.SequenceEqual(use.Ends))
            throw new ArgumentException("Expected two channels on the same intervals. Bring them to one length by InStepsOf first.", nameof(use));
        var (self, import, export) = (default(CompensatedSum), default(CompensatedSum), default(CompensatedSum));
        for (var i = 0; i < use.Count; i++)
        {
            if ((generation.Quality[i] | use.Quality[i]).HasFlag(Quality.Missing)) continue;
            var both = Math.Min(generation.Kwh[i], use.Kwh[i]);
            self.Add(both);
            import.Add(use.Kwh[i] - both);
            export.Add(generation.Kwh[i] - both);
        }
        return new Netting(self.Total, import.Total, export.Total);
    }
}
