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
        var all = NotebookNames.Of([.. steps.Select(step => step.Names)]);
        return [.. steps.Select(step => (step.Id, Of(step.Names, all)))];
    }

    private static StepNames Of(CodeNames names, NotebookNames all)
    {
        var uses = names.Uses.ToHashSet(StringComparer.Ordinal);
        var (changes, inside, perhaps) = (new HashSet<string>(StringComparer.Ordinal), new HashSet<string>(StringComparer.Ordinal), new HashSet<string>(StringComparer.Ordinal));
        // What a function uses is needed where it is called, and what it changes is changed there; the step that only declares it does neither.
        foreach (var touched in all.CalledBy(names).Prepend(names.Touched))
        {
            uses.UnionWith(touched.Uses);
            changes.UnionWith(touched.Changes);
            inside.UnionWith(touched.Inside);
            foreach (var (method, name) in touched.Asked)
            {
                if (all.Changes(method) is not { } changesIt) perhaps.Add(name);
                else if (changesIt) inside.Add(name);
            }
        }
        changes.UnionWith(inside);
        changes.ExceptWith(names.Declares);
        perhaps.UnionWith(names.Gives.Where(given => all.Declared.Contains(given.Function)).Select(given => given.Name));
        perhaps.UnionWith(Aliases.Closure(inside.Concat(perhaps), all.Same));
        perhaps.IntersectWith(all.Declared);
        perhaps.ExceptWith(changes);
        perhaps.ExceptWith(names.Declares);
        return new StepNames(names.Declares, changes, perhaps, uses, names.IsForAll);
    }
}
