namespace SolarEconomics.Workbench;

/// <summary>Which steps are worked out when a reader asks for some: those asked for, what they need that the session does not hold, and what they would otherwise change twice.</summary>
internal static class Plan
{
    /// <summary>Ids in reading order.</summary>
    /// <param name="extent">How much was asked for.</param>
    /// <param name="step">The step meant, where the extent speaks of one.</param>
    /// <param name="dependence">The code steps and what they need.</param>
    /// <param name="works">What is known of each step.</param>
    /// <param name="isInSession">Whether the session holds the values of a step as its text is now.</param>
    /// <param name="maker">The step that made the value of a name that the session holds; null when it holds none.</param>
    public static IReadOnlyList<string> For(
        Extent extent, string? step, Dependence dependence, IReadOnlyDictionary<string, StepWork> works, Func<string, bool> isInSession, Func<string, string?> maker)
    {
        var order = dependence.Steps.Select(one => one.Id).ToList();
        bool IsOld(string id) => works[id].State is StepState.Old or StepState.Perhaps;
        IEnumerable<string> asked = extent switch
        {
            Extent.Everything => order,
            Extent.OutOfDate => order.Where(IsOld),
            Extent.ToHere when step is not null => order.Take(order.IndexOf(step) + 1),
            Extent.Step when step is not null => order.Where(id => id == step),
            _ => [],
        };
        var wanted = asked.ToHashSet(StringComparer.Ordinal);
        var toLookAt = new Queue<string>(wanted);
        while (toLookAt.TryDequeue(out var id))
        {
            var needed = dependence.Above(id).Where(above => !isInSession(above) || IsOld(above));
            // The session holds another step's value under the name: the one that stands above in reading is worked out again.
            var overwritten = UsesOf(dependence, id).Select(name => (Name: name, Definer: dependence.DefinerOf(name, id)))
                .Where(one => one.Definer is not null && maker(one.Name) is { } now && now != one.Definer).Select(one => one.Definer!);
            var renewed = works[id].HasRun ? dependence.Renewers(id) : [];
            foreach (var one in needed.Concat(overwritten).Concat(renewed).Where(wanted.Add).ToList()) toLookAt.Enqueue(one);
        }
        return [.. order.Where(wanted.Contains)];
    }

    private static IReadOnlySet<string> UsesOf(Dependence dependence, string id) => dependence.Steps.First(one => one.Id == id).Names.Uses;
}
