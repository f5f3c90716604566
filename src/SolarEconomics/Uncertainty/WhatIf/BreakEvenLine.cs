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

    /// <summary>Steps (values across) at which the amount stays above 0 over the whole range of the input solved for. Default: none.</summary>
    public IReadOnlyList<double> AlwaysAbove { get; init; } = [];

    /// <summary>Steps (values across) at which it stays below 0. Default: none.</summary>
    public IReadOnlyList<double> AlwaysBelow { get; init; } = [];

    /// <summary>For each of <see cref="Points"/>, whether the amount is above 0 just above it, at somewhat higher values of the input solved for. Default: none, not known.</summary>
    public IReadOnlyList<bool> GainsAbove { get; init; } = [];

    /// <summary>Both inputs as the outlook has them. Default: none, not known.</summary>
    public (double Across, double Solved)? AsItStands { get; init; }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        string First(double value) => Across.Input.InWords(value, Currency, culture);
        string Second(double value) => Solved.Input.InWords(value, Currency, culture);
        var steps = Points.Select(p => p.Across).Distinct().Count();
        var span = $"from {Second(Solved.Low)} to {Second(Solved.High)}";
        var words = Points.Count == 0
            ? $"value of the {Across.Input.Name} from {First(Across.Low)} to {First(Across.High)} goes with a value of the {Solved.Input.Name} {span} at which the {Measure} is 0."
            : $"{(Steps == 1 ? "value" : "values")} of the {Across.Input.Name} go with a value of the {Solved.Input.Name} at which the {Measure} is just 0: " +
              $"{Second(Points[0].Solved)} at {First(Points[0].Across)}{(Points.Count == 1 ? "" : $", {Second(Points[^1].Solved)} at {First(Points[^1].Across)}")}.";
        return new Finding(Points.Count == 0 ? "No" : $"{steps.ToString(culture)} of {Steps.ToString(culture)}", words)
        {
            Tables =
            [
                new FindingTable($"Where the {Measure} is 0", [Across.Input.Name, Solved.Input.Name],
                    [.. Points.Select(p => (IReadOnlyList<string>)[First(p.Across), Second(p.Solved)])]),
            ],
            Notes = [.. Why(First, span), .. Sides(), .. AsItStands is { } now ? [$"As it stands: {Across.Input.Name} {First(now.Across)}, {Solved.Input.Name} {Second(now.Solved)}."] : (string[])[]],
            Cautions = [Cautions.Money],
        };
    }

    /// <summary>Why a step has no point, or more than one.</summary>
    private IEnumerable<string> Why(Func<double, string> first, string span)
    {
        string At(IEnumerable<double> steps) => $"Where the {Across.Input.Name} is {string.Join(", ", steps.Select(first))},";
        if (AlwaysAbove.Count > 0) yield return $"{At(AlwaysAbove)} the {Measure} stays above 0 for every value of the {Solved.Input.Name} {span}.";
        if (AlwaysBelow.Count > 0) yield return $"{At(AlwaysBelow)} the {Measure} stays below 0 for every value of the {Solved.Input.Name} {span}.";
        var several = Points.GroupBy(p => p.Across).Where(g => g.Count() > 1).Select(g => g.Key).ToList();
        if (several.Count > 0) yield return $"{At(several)} it is 0 at more than one value of the {Solved.Input.Name}, so that one limit does not say where it pays.";
        if (Unclear.Count > 0) yield return $"{At(Unclear)} there may be more values than were found. Search a narrower range there.";
    }

    /// <summary>Which side of the line gains, where it is the same all along.</summary>
    private IEnumerable<string> Sides()
    {
        if (GainsAbove.Count == 0 || Points.Count == 0 || GainsAbove.Distinct().Count() > 1) yield break;
        yield return GainsAbove[0]
            ? $"At higher values of the {Solved.Input.Name} than these the {Measure} is above 0, at lower ones below."
            : $"At lower values of the {Solved.Input.Name} than these the {Measure} is above 0, at higher ones below.";
    }
}
