namespace SolarEconomics.Workbench;

/// <summary>What depends on what among the code steps of a notebook, read from the names in their text.</summary>
/// <param name="Steps">Code steps in reading order: id and names.</param>
internal sealed record Dependence(IReadOnlyList<(string Id, CodeNames Names)> Steps)
{
    /// <summary>The steps below one that its change reaches, directly or through others, in reading order.</summary>
    public IReadOnlyList<string> Below(string id)
    {
        var at = IndexOf(id);
        if (at < 0) return [];
        var changed = Steps[at].Names.Defines.ToHashSet(StringComparer.Ordinal);
        var reachesAll = Steps[at].Names.IsForAll;
        var reached = new List<string>();
        foreach (var (below, names) in Steps.Skip(at + 1))
        {
            if (reachesAll || names.Uses.Overlaps(changed))
            {
                reached.Add(below);
                changed.UnionWith(names.Defines);
                reachesAll |= names.IsForAll;
            }
            // A step that declares the name anew without using it gives the steps below it a name of their own.
            else changed.ExceptWith(names.Defines);
        }
        return reached;
    }

    /// <summary>The steps above one whose values it needs, directly or through others, in reading order.</summary>
    public IReadOnlyList<string> Above(string id)
    {
        var at = IndexOf(id);
        if (at < 0) return [];
        var needed = Steps[at].Names.Uses.ToHashSet(StringComparer.Ordinal);
        var found = new List<string>();
        foreach (var (above, names) in Steps.Take(at).Reverse())
        {
            if (!names.IsForAll && !names.Defines.Overlaps(needed)) continue;
            found.Insert(0, above);
            // What a step declares without using it needs nothing from further up.
            needed.ExceptWith(names.Defines.Except(names.Uses, StringComparer.Ordinal));
            needed.UnionWith(names.Uses);
        }
        return found;
    }

    private int IndexOf(string id)
    {
        for (var at = 0; at < Steps.Count; at++) if (Steps[at].Id == id) return at;
        return -1;
    }
}
