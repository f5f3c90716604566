namespace SolarEconomics;

/// <summary>One bar of a bridge: the difference of two full recomputations, with and without one effect.</summary>
/// <param name="Kind">What is corrected.</param>
/// <param name="Label">A few words for the chart.</param>
/// <param name="Part">Its part in the printed order.</param>
/// <param name="ShapleyPart">Its average over all orders.</param>
/// <param name="SmallestPart">Its smallest part (nearest to minus infinity) over all orders.</param>
/// <param name="LargestPart">Its largest part over all orders.</param>
/// <param name="Sentence">The correction in one plain sentence.</param>
/// <param name="Standing">What the result stands at once this and all earlier corrections are on, in words: a date, "after the horizon, short by …", or "never".</param>
/// <remarks>Equation: v(S ∪ {i}) − v(S), S the corrections printed before. Shapley average: mean of that difference over all orders.</remarks>
public sealed record Correction(
    CorrectionKind Kind,
    string Label,
    Money Part,
    Money ShapleyPart,
    Money SmallestPart,
    Money LargestPart,
    string Sentence,
    string? Standing = null);
