namespace SolarEconomics;

/// <summary>The words of one bridge.</summary>
internal interface IBridgeWords
{
    /// <summary>A few words for the bar.</summary>
    string Label(CorrectionKind kind);

    /// <summary>The correction in one sentence.</summary>
    string Sentence(CorrectionKind kind, Money part);

    /// <summary>The whole bridge as a finding, its tables and notes included.</summary>
    Finding Finding(Money start, Money end, IReadOnlyList<Correction> corrections);
}
