namespace SolarEconomics.Workbench;

/// <summary>What depends on what among the code steps of a notebook, read from the names in their text.</summary>
internal sealed class Dependence
{
    private readonly Dictionary<string, int> places = new(StringComparer.Ordinal);

    /// <summary>Code steps in reading order: id and names.</summary>
    public Dependence(IReadOnlyList<(string Id, CodeNames Names)> steps)
    {
        Steps = StepNames.Of(steps);
        for (var at = 0; at < Steps.Count; at++) places[Steps[at].Id] = at;
    }

    public IReadOnlyList<(string Id, StepNames Names)> Steps { get; }

    /// <summary>The steps below one that its change surely reaches, directly or through others, in reading order.</summary>
    public IReadOnlyList<string> Below(string id) => [.. Reached(id).Where(one => one.IsSure).Select(one => one.Id)];

    /// <summary>The steps below one that its change reaches; not sure where a call may have changed what is behind a name, and nobody can know.</summary>
    public IReadOnlyList<(string Id, bool IsSure)> Reached(string id)
    {
        if (!places.TryGetValue(id, out var at)) return [];
        var changed = Steps[at].Names.Defines.ToHashSet(StringComparer.Ordinal);
        var perhaps = Steps[at].Names.Perhaps.ToHashSet(StringComparer.Ordinal);
        var reachesAll = Steps[at].Names.IsForAll;
        var reached = new List<(string, bool)>();
        foreach (var (below, names) in Steps.Skip(at + 1))
        {
            if (reachesAll || names.Uses.Overlaps(changed))
            {
                reached.Add((below, true));
                changed.UnionWith(names.Defines);
                perhaps.UnionWith(names.Perhaps);
                reachesAll |= names.IsForAll;
            }
            else if (names.Uses.Overlaps(perhaps))
            {
                reached.Add((below, false));
                perhaps.UnionWith(names.Defines);
                perhaps.UnionWith(names.Perhaps);
            }
            // A step that declares the name anew without using it gives the steps below it a name of their own.
            else
            {
                changed.ExceptWith(names.Declares);
                perhaps.ExceptWith(names.Declares);
            }
        }
        return reached;
    }

    /// <summary>The steps above one whose values it needs, directly or through others, in reading order.</summary>
    public IReadOnlyList<string> Above(string id) => places.TryGetValue(id, out var at) ? Definers(at, Steps[at].Names.Uses, follow: true) : [];

    /// <summary>The steps above one that made or changed what it changes in place: worked out again, it would change it twice without them.</summary>
    public IReadOnlyList<string> Renewers(string id) => places.TryGetValue(id, out var at)
        ? Definers(at, Steps[at].Names.Changes.Union(Steps[at].Names.Perhaps, StringComparer.Ordinal).ToHashSet(StringComparer.Ordinal), follow: false) : [];

    /// <summary>The nearest step above one that defines a name; null where none does.</summary>
    public string? DefinerOf(string name, string id) =>
        places.TryGetValue(id, out var at) ? Steps.Take(at).LastOrDefault(step => step.Names.Defines.Contains(name)).Id : null;

    private List<string> Definers(int at, IReadOnlySet<string> names, bool follow)
    {
        var needed = names.ToHashSet(StringComparer.Ordinal);
        var found = new List<string>();
        foreach (var (above, of) in Steps.Take(at).Reverse())
        {
            if (!(follow && of.IsForAll) && !of.Defines.Overlaps(needed) && !of.Perhaps.Overlaps(needed)) continue;
            found.Insert(0, above);
            // What a step declares needs nothing from further up, unless it uses it too.
            needed.ExceptWith(of.Declares.Except(of.Uses, StringComparer.Ordinal));
            if (follow) needed.UnionWith(of.Uses);
        }
        return found;
    }
}
