namespace SolarEconomics;

/// <summary>Lays what was not served on the parts of the load: what switched itself off first, then the highest shedding order.</summary>
internal static class LoadShedding
{
    internal static IReadOnlyDictionary<string, double[]> ByPart(EnergyFlows flows)
    {
        var parts = flows.Conditions.Load.Parts;
        var unserved = flows[FlowPath.Unserved];
        var byPart = parts.Select(_ => new double[flows.Time.Count]).ToArray();
        var usable = flows.System.Battery?.UsableKwh ?? 0;
        var inOrder = Enumerable.Range(0, parts.Count).OrderByDescending(k => parts[k].SheddingOrder).ToArray();
        for (var i = 0; i < unserved.Length; i++)
        {
            var left = unserved[i];
            foreach (var waiting in flows.Deferrable) left -= waiting.GivenUpKwh.Span[i];
            if (left <= 0) continue;
            var share = usable > 0 ? flows.RestedKwh(i) / usable : 0;
            foreach (var k in inOrder.Where(k => share < parts[k].OffBelowShare).Concat(inOrder))
            {
                var taken = Math.Min(left, parts[k].Kwh.Span[i] - byPart[k][i]);
                byPart[k][i] += taken;
                left -= taken;
            }
        }
        var named = new Dictionary<string, double[]>(StringComparer.Ordinal);
        for (var k = 0; k < parts.Count; k++) named[parts[k].Name] = named.TryGetValue(parts[k].Name, out var same) ? [.. same.Zip(byPart[k], (a, b) => a + b)] : byPart[k];
        return named;
    }
}
