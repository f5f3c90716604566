namespace SolarEconomics.Workbench;

/// <summary>The names of one step in its notebook: with what the functions that it calls use and change, and with what may be changed behind another name.</summary>
/// <param name="Declares">Made anew here.</param>
/// <param name="Changes">Changed in place here, or by a function that is called here.</param>
/// <param name="Perhaps">What may be changed here, without anybody being able to know.</param>
/// <param name="Uses">Needed from above.</param>
/// <param name="IsForAll">Whether it changes what every later step means.</param>
internal sealed record StepNames(IReadOnlySet<string> Declares, IReadOnlySet<string> Changes, IReadOnlySet<string> Perhaps, IReadOnlySet<string> Uses, bool IsForAll)
{
    public IReadOnlySet<string> Defines { get; } = Declares.Union(Changes, StringComparer.Ordinal).ToHashSet(StringComparer.Ordinal);

    /// <summary>The steps of a notebook, in reading order.</summary>
    public static IReadOnlyList<(string Id, StepNames Names)> Of(IReadOnlyList<(string Id, CodeNames Names)> steps)
    {
        var functions = new Dictionary<string, FunctionNames>(StringComparer.Ordinal);
        var declared = steps.SelectMany(step => step.Names.Declares).ToHashSet(StringComparer.Ordinal);
        var same = steps.SelectMany(step => step.Names.Aliases).Where(pair => declared.Contains(pair.One) && declared.Contains(pair.Other)).ToList();
        foreach (var (name, function) in steps.SelectMany(step => step.Names.Functions)) functions[name] = function;
        return [.. steps.Select(step => (step.Id, Of(step.Names, functions, declared, same)))];
    }

    private static StepNames Of(CodeNames names, Dictionary<string, FunctionNames> functions, HashSet<string> declared, List<(string One, string Other)> same)
    {
        var uses = names.Uses.ToHashSet(StringComparer.Ordinal);
        var changes = names.Changes.ToHashSet(StringComparer.Ordinal);
        // What a function uses is needed where it is called, and what it changes is changed there; the step that only declares it does neither.
        var called = new Queue<string>(names.Uses.Where(functions.ContainsKey));
        var seen = called.ToHashSet(StringComparer.Ordinal);
        while (called.TryDequeue(out var name))
        {
            uses.UnionWith(functions[name].Uses);
            changes.UnionWith(functions[name].Changes);
            foreach (var next in functions[name].Uses.Where(next => functions.ContainsKey(next) && seen.Add(next))) called.Enqueue(next);
        }
        changes.ExceptWith(names.Declares);
        var perhaps = names.Gives.Where(given => declared.Contains(given.Function) && declared.Contains(given.Name)).Select(given => given.Name).ToHashSet(StringComparer.Ordinal);
        perhaps.UnionWith(OthersFor(changes.Concat(perhaps).ToHashSet(StringComparer.Ordinal), same));
        perhaps.ExceptWith(changes);
        perhaps.ExceptWith(names.Declares);
        return new StepNames(names.Declares, changes, perhaps, uses, names.IsForAll);
    }

    /// <summary>Other names for the objects behind some names.</summary>
    private static HashSet<string> OthersFor(HashSet<string> names, List<(string One, string Other)> same)
    {
        var all = names.ToHashSet(StringComparer.Ordinal);
        for (var count = -1; count != all.Count;)
        {
            count = all.Count;
            foreach (var (one, other) in same) if (all.Contains(one) || all.Contains(other)) { all.Add(one); all.Add(other); }
        }
        all.ExceptWith(names);
        return all;
    }
}
