using System.Globalization;

namespace SolarEconomics;

/// <summary>From the straight-line answer to the honest one, correction by correction, each with its money.</summary>
/// <param name="Title">What the bridge leads from and to.</param>
/// <param name="StartLabel">A few words for the first bar.</param>
/// <param name="Start">The straight-line answer.</param>
/// <param name="Corrections">The corrections in printed order; their parts sum to <paramref name="End"/> less <paramref name="Start"/>.</param>
/// <param name="EndLabel">A few words for the last bar.</param>
/// <param name="End">The honest answer.</param>
/// <param name="Finding">The bridge in words.</param>
public sealed record Bridge(
    string Title,
    string StartLabel,
    Money Start,
    IReadOnlyList<Correction> Corrections,
    string EndLabel,
    Money End,
    Finding Finding) : IFinding
{
    /// <inheritdoc/>
    public Finding Say(CultureInfo culture) => Finding;
}
