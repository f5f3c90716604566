namespace SolarEconomics;

/// <summary>Parts draws into groups of like value of one input: what the result does from group to group is what that input does to it.</summary>
internal static class DrawGroups
{
    private const int MostGroups = 40;
    private const int LeastInGroup = 25;

    /// <summary>Share of the variance that goes with the input, with what groups of this size show by chance taken off.</summary>
    internal static double ShareOfVariance(double[] input, ReadOnlySpan<double> result)
    {
        var mean = Statistics.MeanOf(result);
        var (between, within) = (0.0, 0.0);
        var groups = Groups(input, result.Length);
        foreach (var group in groups)
        {
            var groupMean = MeanOf(group, result);
            between += group.Length * (groupMean - mean) * (groupMean - mean);
            foreach (var draw in group) within += (result[draw] - groupMean) * (result[draw] - groupMean);
        }
        var total = between + within;
        if (total <= 0) return 0;
        var byChance = within / (result.Length - groups.Count) * (groups.Count - 1);
        return Math.Clamp((between - byChance) / total, 0, 1);
    }

    /// <summary>What choosing by group is worth over choosing once for all.</summary>
    internal static double WorthForDecision(double[] input, ReadOnlySpan<double> difference)
    {
        var chosen = 0.0;
        foreach (var group in Groups(input, difference.Length)) chosen += group.Length * Math.Max(0, MeanOf(group, difference));
        return Math.Max(0, (chosen / difference.Length) - Math.Max(0, Statistics.MeanOf(difference)));
    }

    private static List<int[]> Groups(double[] input, int count)
    {
        var order = new int[count];
        for (var i = 0; i < count; i++) order[i] = i;
        // Ties in the order of the draws: the same on every machine.
        Array.Sort(order, (a, b) => input[a] != input[b] ? input[a].CompareTo(input[b]) : a.CompareTo(b));
        var groups = Math.Clamp(count / LeastInGroup, 1, MostGroups);
        var parted = new List<int[]>();
        for (var g = 0; g < groups; g++) parted.Add(order[(int)((long)count * g / groups)..(int)((long)count * (g + 1) / groups)]);
        return parted;
    }

    private static double MeanOf(int[] group, ReadOnlySpan<double> values)
    {
        var sum = 0.0;
        foreach (var draw in group) sum += values[draw];
        return sum / group.Length;
    }
}
