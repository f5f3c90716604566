namespace SolarEconomics.Workbench;

/// <summary>Which steps are worked out when a reader asks for some: those asked for, and what they need that the session does not hold.</summary>
internal static class Plan
{
    /// <summary>Ids in reading order.</summary>
    /// <param name="extent">How much was asked for.</param>
    /// <param name="step">The step meant, where the extent speaks of one.</param>
    /// <param name="dependence">The code steps and what they need.</param>
    /// <param name="isInSession">Whether the session holds the values of a step as its text is now.</param>
    /// <param name="isOld">Whether a step's answer is out of date.</param>
    public static IReadOnlyList<string> For(Extent extent, string? step, Dependence dependence, Func<string, bool> isInSession, Func<string, bool> isOld)
    {
        var order = dependence.Steps.Select(one => one.Id).ToList();
        IEnumerable<string> asked = extent switch
        {
            Extent.Everything => order,
            Extent.OutOfDate => order.Where(isOld),
            Extent.ToHere when step is not null => order.Take(order.IndexOf(step) + 1),
            Extent.Step when step is not null => order.Where(id => id == step),
            _ => [],
        };
        var wanted = asked.ToHashSet(StringComparer.Ordinal);
        foreach (var id in wanted.ToList()) wanted.UnionWith(dependence.Above(id).Where(above => !isInSession(above) || isOld(above)));
        return [.. order.Where(wanted.Contains)];
    }
}
