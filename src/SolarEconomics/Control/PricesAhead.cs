namespace SolarEconomics;

/// <summary>The highest price in a window that runs ahead, for all intervals in one pass.</summary>
internal static class PricesAhead
{
    /// <summary>For each interval the highest price of all intervals that start less than some hours after it.</summary>
    internal static double[] Highest(ReadOnlySpan<double> prices, double[] hours, double hoursAhead)
    {
        var starts = new double[hours.Length];
        for (var i = 1; i < hours.Length; i++) starts[i] = starts[i - 1] + hours[i - 1];
        var highest = new double[hours.Length];
        // Candidates in falling order of price: a later, dearer interval makes the cheaper ones before it useless.
        var candidates = new LinkedList<int>();
        for (int i = 0, next = 0; i < hours.Length; i++)
        {
            for (; next < hours.Length && starts[next] < starts[i] + hoursAhead; next++)
            {
                while (candidates.Last is { } last && prices[last.Value] <= prices[next]) candidates.RemoveLast();
                candidates.AddLast(next);
            }
            while (candidates.First!.Value < i) candidates.RemoveFirst();
            highest[i] = prices[candidates.First!.Value];
        }
        return highest;
    }
}
