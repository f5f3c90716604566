namespace SolarEconomics;

/// <summary>A tariff contradicts itself or does not say enough to make a bill.</summary>
public sealed class TariffException : Exception
{
    /// <summary>An exception with one mistake.</summary>
    /// <param name="mistake">Found, where, expected, what to do.</param>
    public TariffException(string mistake) : this([mistake]) { }

    /// <summary>An exception with all mistakes found.</summary>
    /// <param name="mistakes">One sentence each, at least one.</param>
    public TariffException(IReadOnlyList<string> mistakes) : base(string.Join(Environment.NewLine, mistakes)) => Mistakes = mistakes;

    /// <summary>All mistakes found, one sentence each.</summary>
    public IReadOnlyList<string> Mistakes { get; }
}
