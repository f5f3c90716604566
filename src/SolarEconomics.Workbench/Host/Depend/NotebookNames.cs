namespace SolarEconomics.Workbench;

/// <summary>What the steps of a notebook declare together, so that each of them can be read.</summary>
/// <param name="Declared">Every name that stands for something of the notebook.</param>
/// <param name="Functions">Functions, with what they touch.</param>
/// <param name="Methods">Methods for objects, with whether they change theirs.</param>
/// <param name="Same">Pairs of names that may stand for one object.</param>
internal sealed record NotebookNames(
    IReadOnlySet<string> Declared, IReadOnlyDictionary<string, Touched> Functions, IReadOnlyDictionary<string, bool> Methods, IReadOnlyList<(string One, string Other)> Same)
{
    public static NotebookNames Of(IReadOnlyList<CodeNames> steps)
    {
        var functions = new Dictionary<string, Touched>(StringComparer.Ordinal);
        var methods = new Dictionary<string, bool>(StringComparer.Ordinal);
        var declared = steps.SelectMany(step => step.Declares).ToHashSet(StringComparer.Ordinal);
        foreach (var (name, function) in steps.SelectMany(step => step.Functions)) functions[name] = function;
        foreach (var (name, changes) in steps.SelectMany(step => step.Methods)) methods[name] = methods.GetValueOrDefault(name) || changes;
        return new NotebookNames(declared, functions, methods, [.. steps.SelectMany(step => step.Aliases).Where(pair => declared.Contains(pair.One) && declared.Contains(pair.Other))]);
    }

    /// <summary>Whether a method of this name changes its object; null where nobody can know.</summary>
    public bool? Changes(string method) => Methods.TryGetValue(method, out var changes) ? changes : KnownMethods.LeaveAlone(method) ? false : null;

    /// <summary>The functions that a step calls, and those that they call.</summary>
    public IEnumerable<Touched> CalledBy(CodeNames step)
    {
        var called = new Queue<string>(step.Mentions.Where(Functions.ContainsKey));
        var seen = called.ToHashSet(StringComparer.Ordinal);
        while (called.TryDequeue(out var name))
        {
            yield return Functions[name];
            foreach (var next in Functions[name].Uses.Where(next => Functions.ContainsKey(next) && seen.Add(next))) called.Enqueue(next);
        }
    }
}
