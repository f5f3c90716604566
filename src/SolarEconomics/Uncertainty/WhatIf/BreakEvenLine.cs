using System.Globalization;

namespace SolarEconomics;

/// <summary>All pairs of two inputs at which an amount is just 0. Where it crosses 0 there, it gains on one side of the line and loses on the other.</summary>
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

    /// <summary>Those of <see cref="Points"/> at which the amount leaps over 0 and is 0 nowhere near. Default: none.</summary>
    public IReadOnlyList<(double Across, double Solved)> Jumps { get; init; } = [];

    /// <summary>For each of <see cref="Points"/>: true where the amount is above 0 at somewhat higher values of the input solved for and below 0 at lower ones, false where it is
    /// the other way round, null where it only touches 0. Default: none, not known.</summary>
    public IReadOnlyList<bool?> GainsAbove { get; init; } = [];

    /// <summary>Pairs between two steps at which the line leaves the range of the input solved for, by its low or its high end. Default: none known.</summary>
    public IReadOnlyList<(double Across, double Solved)> Edges { get; init; } = [];

    /// <summary>Both inputs as the outlook has them. Default: none, not known.</summary>
    public (double Across, double Solved)? AsItStands { get; init; }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        string First(double value) => Across.Input.InWords(value, Currency, culture);
        string Second(double value) => Solved.Input.InWords(value, Currency, culture);
        var steps = Points.Select(p => p.Across).Distinct().Count();
        var span = $"from {Second(Solved.Low)} to {Second(Solved.High)}";
        var onlyLeaps = Jumps.Count > 0 && Jumps.Count == Points.Count;
        var words = Points.Count == 0
            ? $"value of the {Across.Input.Name} that was tried from {First(Across.Low)} to {First(Across.High)} goes with a value of the {Solved.Input.Name} {span} at which the {Measure} is 0."
            : $"{(Steps == 1 ? "value" : "values")} of the {Across.Input.Name} go with a value of the {Solved.Input.Name} at which the {Measure} {(onlyLeaps ? "changes its sign" : "is just 0")}: " +
              $"{Second(Points[0].Solved)} at {First(Points[0].Across)}{(Points.Count == 1 ? "" : $", {Second(Points[^1].Solved)} at {First(Points[^1].Across)}")}.";
        return new Finding(Points.Count == 0 ? "No" : $"{steps.ToString(culture)} of {Steps.ToString(culture)}", words)
        {
            Tables =
            [
                new FindingTable($"Where the {Measure} {(onlyLeaps ? "changes its sign" : "is 0")}", [Across.Input.Name, Solved.Input.Name],
                    [.. Points.Select(p => (IReadOnlyList<string>)[First(p.Across), Second(p.Solved)])]),
            ],
            Notes = [.. Why(First, span), .. Turns(First, span), .. Leaps(First, Second), .. Sides(), .. AsItStands is { } now ? [$"As it stands: {Across.Input.Name} {First(now.Across)}, {Solved.Input.Name} {Second(now.Solved)}."] : (string[])[]],
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

    /// <summary>Neighbouring steps of which one gains and the other loses throughout.</summary>
    private IEnumerable<string> Turns(Func<double, string> first, string span)
    {
        var steps = AlwaysAbove.Select(at => (At: at, Gains: (bool?)true)).Concat(AlwaysBelow.Select(at => (At: at, Gains: (bool?)false)))
            .Concat(Points.Select(p => (At: p.Across, Gains: (bool?)null))).Concat(Unclear.Select(at => (At: at, Gains: (bool?)null))).DistinctBy(s => s.At).OrderBy(s => s.At).ToList();
        foreach (var (a, b) in steps.Zip(steps.Skip(1)))
        {
            if (a.Gains is not { } from || b.Gains is not { } to || from == to) continue;
            var at = Edges.Where(e => e.Across >= a.At && e.Across <= b.At).Select(e => first(e.Across)).Distinct(StringComparer.Ordinal).ToList();
            yield return $"Between {first(a.At)} and {first(b.At)} of the {Across.Input.Name} the {Measure} changes its sign whatever the {Solved.Input.Name} {span}{(at.Count == 0 ? "" : $": at {string.Join(" to ", at)}")}.";
        }
    }

    private IEnumerable<string> Leaps(Func<double, string> first, Func<double, string> second)
    {
        if (Jumps.Count == 0) yield break;
        yield return Solved.Input.IsWhole
            ? $"From the {Solved.Input.Name} named on, the {Measure} lies on the other side of 0; no whole number gives just 0."
            : $"It leaps over 0, so that no value gives just 0, with a {Solved.Input.Name} of {string.Join(", ", Jumps.Select(j => $"{second(j.Solved)} at {first(j.Across)}"))}.";
    }

    /// <summary>Which side of the line gains, where it is the same all along and was looked into to the end.</summary>
    private IEnumerable<string> Sides()
    {
        if (Points.Count == 0 || GainsAbove.Count != Points.Count || Unclear.Count > 0) yield break;
        var touches = Points.Zip(GainsAbove).Where(p => p.Second is null).Select(p => p.First.Across).Distinct().Count();
        if (touches > 0)
        {
            yield return $"At {touches} of the values the {Measure} only touches 0 and lies on the same side of it below and above.";
            yield break;
        }
        if (GainsAbove.Distinct().Count() > 1) yield break;
        // Where a whole input leaps, the value found is the first one on the other side.
        var (higher, those) = Solved.Input.IsWhole && Jumps.Count > 0 ? ("these and higher", "") : ("higher", " than these");
        yield return GainsAbove[0] == true
            ? $"At {higher} values of the {Solved.Input.Name}{those} the {Measure} is above 0, at lower ones below."
            : $"At lower values of the {Solved.Input.Name} than these the {Measure} is above 0, at {higher} ones below.";
    }
}
