using System.Globalization;

namespace SolarEconomics;

/// <summary>All pairs of two inputs at which an amount is just 0: on one side of the line it gains, on the other it loses.</summary>
/// <param name="Measure">The amount in words.</param>
/// <param name="Across">The input that is stepped through.</param>
/// <param name="Solved">The input that is solved for at each step.</param>
/// <param name="Points">Pairs (value across, value solved), by value across; none for a step where no value in the range gives 0.</param>
/// <param name="Steps">Steps taken.</param>
/// <param name="Currency">Currency of the amount.</param>
public sealed record BreakEvenLine(
    string Measure, DeclaredRange Across, DeclaredRange Solved, IReadOnlyList<(double Across, double Solved)> Points, int Steps, Currency Currency) : IFinding
{
    /// <summary>Steps (values across) at which more values could lie than were found, as looking closer would have taken too long. Default: none.</summary>
    public IReadOnlyList<double> Unclear { get; init; } = [];

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        string First(double value) => Across.Input.InWords(value, Currency, culture);
        string Second(double value) => Solved.Input.InWords(value, Currency, culture);
        var steps = Points.Select(p => p.Across).Distinct().Count();
        var words = Points.Count == 0
            ? $"pair of {Across.Input.Name} and {Solved.Input.Name} within their ranges brings the {Measure} to 0."
            : $"of {Steps.ToString(culture)} steps of the {Across.Input.Name} have a {Solved.Input.Name} at which the {Measure} is just 0: " +
              $"from {Second(Points[0].Solved)} at {First(Points[0].Across)} to {Second(Points[^1].Solved)} at {First(Points[^1].Across)}.";
        return new Finding(Points.Count == 0 ? "No" : steps.ToString(culture), words)
        {
            Tables =
            [
                new FindingTable($"Where the {Measure} is 0", [Across.Input.Name, Solved.Input.Name],
                    [.. Points.Select(p => (IReadOnlyList<string>)[First(p.Across), Second(p.Solved)])]),
            ],
            Notes = Unclear.Count == 0 ? [] : [$"Not ruled out: more values at {string.Join(", ", Unclear.Select(First))} of the {Across.Input.Name}. Search a narrower range there."],
            Cautions = [Cautions.Money],
        };
    }
}
