using System.Globalization;

namespace SolarEconomics;

/// <summary>Which input moves the answer most: each is moved over its declared range while all others stay.</summary>
/// <param name="Measure">The amount in words.</param>
/// <param name="Base">The amount as the outlook stands.</param>
/// <param name="Bars">One bar for each input, the longest first.</param>
/// <remarks>One input at a time: what two do together is in a grid, what all do together in draws. Each end is a full recomputation of all years.</remarks>
public sealed record Tornado(string Measure, Money Base, IReadOnlyList<TornadoBar> Bars) : IFinding
{
    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        var longest = Bars[0];
        string Input(double value) => longest.Range.Input.InWords(value, Base.Currency, culture);
        var flips = Bars.Where(b => (b.AtLow.Amount < 0) != (b.AtHigh.Amount < 0)).Select(b => b.Range.Input.Name).ToList();
        var words = $"moves the {Measure} most: from {Wording.Whole(longest.AtLow, culture)} at {Input(longest.Range.Low)} to {Wording.Whole(longest.AtHigh, culture)} at {Input(longest.Range.High)}, all else as it stands. " +
            (flips.Count == 0 ? "No input alone turns the sign of the answer within its range." : $"Alone they turn the sign of the answer: {string.Join(", ", flips)}.");
        return new Finding(Wording.Capital(longest.Range.Input.Name), words)
        {
            Tables = [Table(culture)],
            Notes = ["One input at a time, each between the two ends declared for it: a wider range makes a longer bar."],
            Cautions = [Cautions.Money],
        };
    }

    private FindingTable Table(CultureInfo culture) => new($"{Wording.Capital(Measure)} with one input moved ({Base.Currency}); as it stands {Wording.Whole(Base, culture)}",
        ["Input", "As it stands", "Low end", "High end", "At the low end", "At the high end", "Swing"],
        [.. Bars.Select(b => (IReadOnlyList<string>)
        [
            b.Range.Input.Name, b.Range.Input.InWords(b.Base, Base.Currency, culture), b.Range.Input.InWords(b.Range.Low, Base.Currency, culture),
            b.Range.Input.InWords(b.Range.High, Base.Currency, culture), Wording.Whole(b.AtLow, culture), Wording.Whole(b.AtHigh, culture), Wording.Whole(b.Swing, culture),
        ])]);
}
