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
    /// <summary>Those of <see cref="Values"/> at which the amount leaps over 0 from one side to the other and is 0 nowhere near. Default: none.</summary>
    public IReadOnlyList<double> Jumps { get; init; } = [];

    /// <summary>How many values of the input were looked at. Default: 0, not known.</summary>
    public int Looks { get; init; }

    /// <summary>Stretches in which two more values could lie, as looking closer would have taken too long. Default: none.</summary>
    public IReadOnlyList<(double Low, double High)> Unclear { get; init; } = [];

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
            Notes =
            [
                $"Searched {span}; {ends}.",
                .. Looks == 0 ? [] : (string[])[$"Looked at {Looks.ToString(culture)} values, closer where the amount bends near 0. Two crossings between neighbouring values " +
                    "are missed only where it bends over four times more sharply than around them."],
                .. Jumps.Select(j => $"At {Input(j)} the {Measure} leaps over 0: below it lies one side, above it the other, and no value gives just 0."),
                .. Unclear.Select(u => $"Not ruled out: two more values between {Input(u.Low)} and {Input(u.High)}. Search that stretch by itself."),
            ],
            Cautions = [Cautions.Money],
        };
    }
}
