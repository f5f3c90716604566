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
            BreakEvenEnd.Found => (Input(Values[0]), $"is the {Range.Input.Name} {(Jumps.Count > 0 ? $"at which the {Measure} changes its sign" : $"at which the {Measure} is just 0")}. {stands}"),
            BreakEvenEnd.Several => (string.Join(", ", Values.Select(Input)), $"are the values of the {Range.Input.Name} at which the {Measure} is 0, so that one limit does not say where it pays: {ends}. {stands}"),
            _ => ("none", $"for the {Range.Input.Name} {span}: the {Measure} stays {(End == BreakEvenEnd.AlwaysAbove ? "above" : "below")} 0, {ends}. {Why(culture)} {stands}"),
        };
        return new Finding(figure, words)
        {
            Notes =
            [
                $"Searched {span}; {ends}.",
                .. Looks == 0 || Range.Input.IsWhole ? [] : (string[])[$"Looked at {Looks.ToString(culture)} values, closer where the amount bends near 0. Two crossings between neighbouring values " +
                    "are missed only where it bends over four times more sharply than around them."],
                .. Jumps.Select(j => Range.Input.IsWhole
                    ? $"From {Input(j)} on the {Measure} lies on the other side of 0; no whole number gives just 0."
                    : $"At {Input(j)} the {Measure} leaps over 0, so that no value gives just 0."),
                .. Unclear.Select(u => $"Not ruled out: two more values between {Input(u.Low)} and {Input(u.High)}. Search that stretch by itself."),
            ],
            Cautions = [Cautions.Money],
        };
    }

    /// <summary>What a search without a value says of its input.</summary>
    private string Why(CultureInfo culture)
    {
        if (AtLow == AtHigh) return "It is the same at both ends: the answer does not seem to hang on this input.";
        var isLow = Math.Abs(AtLow.Amount) < Math.Abs(AtHigh.Amount);
        var (end, limit) = isLow ? (Range.Low, Range.Input.Lowest) : (Range.High, Range.Input.Highest);
        var at = Range.Input.InWords(end, AtLow.Currency, culture);
        return end == limit
            ? $"Of the two ends it is nearer to 0 at {at}, beyond which the input makes no sense."
            : $"Of the two ends it is nearer to 0 at {at}: a range that goes further {(isLow ? "down" : "up")} may hold a value.";
    }
}
