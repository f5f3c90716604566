namespace SolarEconomics;

/// <summary>What the records of one rung leave open, as a linear program: per interval what each flow may be, and the sums that flows of many intervals must meet.</summary>
/// <remarks>
/// Conditions of each interval, besides each flow's own limits: export ≤ generation + discharge; charge ≤ generation + import;
/// export + charge + standby ≤ generation + import + discharge. They are what flows between array, grid, battery and use can carry. Source: flow-1.
/// </remarks>
internal sealed class EndsProgram
{
    internal EndsProgram(EvidencePrices prices, double[] standbyKwh)
    {
        var count = prices.Import.Length;
        Prices = prices;
        StandbyKwh = standbyKwh;
        (Export, Import, Charge, Discharge) = (new OpenFlow(count), new OpenFlow(count), new OpenFlow(count), new OpenFlow(count));
        Blocks = BlocksOf(prices.MonthOf);
    }

    internal EvidencePrices Prices { get; }

    internal double[] StandbyKwh { get; }

    internal OpenFlow Export { get; }

    internal OpenFlow Import { get; }

    internal OpenFlow Charge { get; }

    internal OpenFlow Discharge { get; }

    /// <summary>Generation of each place, counted at its measurement point.</summary>
    internal List<OpenGeneration> Generation { get; } = [];

    /// <summary>Lowest and highest of each sum. Unit: kWh.</summary>
    internal List<(double LowKwh, double HighKwh)> Sums { get; } = [];

    /// <summary>The calendar months: within one, intervals meet only in sums.</summary>
    internal IReadOnlyList<(int From, int To)> Blocks { get; }

    /// <summary>Adds a sum and returns its number.</summary>
    internal int AddSum(double lowKwh, double highKwh)
    {
        Sums.Add((lowKwh, highKwh));
        return Sums.Count - 1;
    }

    private static List<(int From, int To)> BlocksOf(int[] monthOf)
    {
        var blocks = new List<(int From, int To)>();
        for (var from = 0; from < monthOf.Length;)
        {
            var to = from;
            while (to < monthOf.Length && monthOf[to] == monthOf[from]) to++;
            blocks.Add((from, to));
            from = to;
        }
        return blocks;
    }
}
