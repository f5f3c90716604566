namespace SolarEconomics;

/// <summary>A day of a battery of which nothing is recorded: charged where that costs least, discharged where it is worth most, within its power, its cycles and its losses.</summary>
internal static class BatteryDay
{
    /// <summary>Lays the day's charge and discharge. Intervals in which it would do both are left as they are: half an hour can hold both.</summary>
    /// <param name="from">First interval.</param>
    /// <param name="to">First interval after the day.</param>
    /// <param name="room">Most that goes in or out in one interval. Unit: kWh.</param>
    /// <param name="most">Most that is charged in the day. Unit: kWh.</param>
    /// <param name="leastShare">Lowest share of the charge that comes out again.</param>
    /// <param name="cost">What a kWh charged costs.</param>
    /// <param name="worth">What a kWh discharged is worth.</param>
    /// <param name="charge">Receives the charge.</param>
    /// <param name="discharge">Receives the discharge.</param>
    internal static void Lay(int from, int to, double room, double most, double leastShare, double[] cost, double[] worth, double[] charge, double[] discharge)
    {
        var cheapest = Enumerable.Range(from, to - from).OrderBy(i => cost[i]).ToArray();
        var dearest = Enumerable.Range(from, to - from).OrderByDescending(i => worth[i]).ToArray();
        var worthHaving = room * dearest.Count(i => worth[i] > 0);
        double Out(double charged) => Math.Clamp(worthHaving, leastShare * charged, charged);
        // The value is concave in what is charged, with corners where an interval is full or the discharge changes its rule: one of them is best.
        var full = Math.Min(most, room * cheapest.Length);
        var corners = Enumerable.Range(0, cheapest.Length + 1).SelectMany(k => (double[])[k * room, k * room / leastShare])
            .Concat([full, worthHaving]).Where(c => c <= full);
        var (best, highest) = (0.0, 0.0);
        foreach (var charged in corners)
        {
            var value = Along(dearest, worth, room, Out(charged), null) - Along(cheapest, cost, room, charged, null);
            if (value > highest) (best, highest) = (charged, value);
        }
        _ = Along(cheapest, cost, room, best, charge);
        _ = Along(dearest, worth, room, Out(best), discharge);
    }

    private static double Along(int[] order, double[] price, double room, double kwh, double[]? into)
    {
        var sum = 0.0;
        foreach (var i in order)
        {
            if (kwh <= 0) break;
            var part = Math.Min(room, kwh);
            if (into is not null) into[i] = part;
            sum += part * price[i];
            kwh -= part;
        }
        return sum;
    }
}
