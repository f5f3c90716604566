using System.Globalization;

namespace SolarEconomics;

/// <summary>The value of one input at which an amount is just 0, all else as it stands; or why there is none.</summary>
/// <param name="Measure">The amount in words.</param>
/// <param name="Range">The input and the ends between which was searched.</param>
/// <param name="Values">Every value found, lowest first.</param>
/// <param name="End">How the search ended.</param>
/// <param name="AtLow">Amount at the low end.</param>
/// <param name="AtHigh">Amount at the high end.</param>
/// <param name="AsItStands">The input as the outlook has it.</param>
public sealed record BreakEven(
    string Measure, DeclaredRange Range, IReadOnlyList<double> Values, BreakEvenEnd End, Money AtLow, Money AtHigh, double AsItStands) : IFinding
{
    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        string Input(double value) => Range.Input.InWords(value, AtLow.Currency, culture);
        var span = $"from {Input(Range.Low)} to {Input(Range.High)}";
        var ends = $"{Wording.Whole(AtLow, culture)} at the low end, {Wording.Whole(AtHigh, culture)} at the high end";
        var stands = $"As it stands: {Input(AsItStands)}.";
        var (figure, words) = End switch
        {
            BreakEvenEnd.Found => (Input(Values[0]), $"is the {Range.Input.Name} at which the {Measure} is just 0. {stands}"),
            BreakEvenEnd.Several => (string.Join(", ", Values.Select(Input)), $"are values of the {Range.Input.Name} at which the {Measure} is 0: it crosses more than once. {stands}"),
            _ => ("none", $"for the {Range.Input.Name} {span}: the {Measure} stays {(End == BreakEvenEnd.AlwaysAbove ? "above" : "below")} 0, {ends}. " +
                $"Either the decision does not hang on this input, or the range is too narrow. {stands}"),
        };
        return new Finding(figure, words)
        {
            Notes = [$"Searched {span}; {ends}."],
            Cautions = [Cautions.Money],
        };
    }
}
