namespace SolarEconomics;

/// <summary>Lays a total on intervals of limited room, cheapest or dearest first: the exact optimum of a linear objective with one sum.</summary>
internal static class Allotment
{
    /// <summary>Adds <paramref name="total"/> to <paramref name="into"/>, in ascending order of <paramref name="worth"/> or descending.</summary>
    /// <returns>What found no room.</returns>
    internal static double Lay(double total, IReadOnlyList<int> intervals, double[] room, double[] worth, bool ascending, double[] into)
    {
        var order = intervals.ToArray();
        var keys = new double[order.Length];
        for (var k = 0; k < order.Length; k++) keys[k] = ascending ? worth[order[k]] : -worth[order[k]];
        Array.Sort(keys, order);
        var left = total;
        foreach (var i in order)
        {
            if (left <= 0) return 0;
            var part = Math.Min(left, Math.Max(0, room[i] - into[i]));
            into[i] += part;
            left -= part;
        }
        return Math.Max(0, left);
    }

    /// <summary>Adds a total between two limits to <paramref name="into"/> where it is worth most: the lower limit in any case, more only while it is worth anything.</summary>
    internal static void LayBetween(double low, double high, IReadOnlyList<int> intervals, double[] room, double[] worth, double[] into)
    {
        var laid = 0.0;
        foreach (var i in intervals.OrderByDescending(i => worth[i]))
        {
            var part = Math.Min((worth[i] > 0 ? high : low) - laid, Math.Max(0, room[i] - into[i]));
            if (part <= 0) continue;
            into[i] += part;
            laid += part;
        }
    }
}
