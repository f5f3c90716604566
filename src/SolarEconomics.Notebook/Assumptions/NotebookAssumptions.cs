using Microsoft.CodeAnalysis.Text;

namespace SolarEconomics.Notebook;

/// <summary>The assumptions of a notebook: read from its code steps, and set by replacing one number in the code.</summary>
public sealed class NotebookAssumptions
{
    private readonly IReadOnlyList<FoundAssumption> found;

    private NotebookAssumptions(IReadOnlyList<FoundAssumption> found, IReadOnlyList<string> problems) => (this.found, Problems) = (found, problems);

    /// <summary>The assumptions in the order of the notebook.</summary>
    public IReadOnlyList<NotebookAssumption> Items => [.. found.Select(f => f.Assumption)];

    /// <summary>Declarations that cannot be read or stand there twice, each in a sentence.</summary>
    public IReadOnlyList<string> Problems { get; }

    /// <summary>Reads the assumptions of a notebook; nothing is run.</summary>
    /// <param name="document">The notebook.</param>
    public static NotebookAssumptions Of(NotebookDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        var problems = new List<string>();
        var found = new List<FoundAssumption>();
        foreach (var step in document.Steps.Where(s => s.Kind == StepKind.Code && s.Source.Contains(nameof(Assume), StringComparison.Ordinal)))
        {
            foreach (var one in AssumptionReader.Read(step, problems))
            {
                if (found.Exists(f => Named(f, one.Assumption.Name))) problems.Add(Throw.AssumptionTwice(one.Assumption.Name));
                else found.Add(one);
            }
        }
        return new(found, problems);
    }

    /// <summary>Checks values without setting them: what is wrong with each, in a sentence; empty where all fit.</summary>
    /// <param name="values">Name and typed value of each.</param>
    public IReadOnlyList<string> Check(IEnumerable<KeyValuePair<string, string>> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        return [.. values.Select(v => Literal(v.Key, v.Value).Problem).OfType<string>()];
    }

    /// <summary>Replaces the numbers of some assumptions in a notebook's code, all of them or none.</summary>
    /// <param name="document">The notebook.</param>
    /// <param name="values">Name and typed value of each: <c>0.05</c>, or <c>5 %</c> for a rate or share.</param>
    /// <returns>What is wrong, one sentence each, with nothing changed; empty where all were set.</returns>
    public static IReadOnlyList<string> Set(NotebookDocument document, IEnumerable<KeyValuePair<string, string>> values)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(values);
        var all = values.ToList();
        var problems = Of(document).Check(all);
        if (problems.Count > 0) return problems;
        foreach (var (name, text) in all)
        {
            // Read anew each time: a longer number moves the places of those after it.
            var (one, literal, _) = Of(document).Literal(name, text);
            var source = SourceText.From(document[one!.Assumption.StepId].Source);
            document.SetSource(one.Assumption.StepId, source.Replace(one.Literal, literal!).ToString());
        }
        return [];
    }

    private (FoundAssumption? One, string? Literal, string? Problem) Literal(string name, string text)
    {
        if (found.FirstOrDefault(f => Named(f, name)) is not { } one) return (null, null, Throw.NoAssumption(name, Items.Select(i => i.Name)));
        var (literal, problem) = AssumptionText.Read(one.Assumption, text);
        return (one, literal, problem);
    }

    private static bool Named(FoundAssumption found, string name) => string.Equals(found.Assumption.Name, name, StringComparison.Ordinal);
}
