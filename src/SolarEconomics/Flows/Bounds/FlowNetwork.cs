namespace SolarEconomics;

/// <summary>The ways that energy can go between sources and sinks, and the cuts of that network which bound each of them.</summary>
/// <remarks>The network is the same for every window, so the few cuts that can bind are found once: a window then costs some hundred sums.</remarks>
internal static class FlowNetwork
{
    /// <summary>Below this records are not said to contradict: the last digits of sums.</summary>
    internal const double DustKwh = 1e-9;

    private enum Node { Outside, Array, Kept, Grid, FromGrid, ToGrid, IntoBattery, Battery, OutOfBattery, Use }

    // Recorded arcs first, in the order of RecordsOf; the others carry what is between, 0 or more.
    private static readonly (Node From, Node To)[] s_arcs =
    [
        (Node.Outside, Node.Array), (Node.Grid, Node.FromGrid), (Node.ToGrid, Node.Grid), (Node.Outside, Node.Grid),
        (Node.IntoBattery, Node.Battery), (Node.Battery, Node.OutOfBattery), (Node.Battery, Node.Outside), (Node.Use, Node.Outside),
        (Node.Kept, Node.Use), (Node.Kept, Node.IntoBattery), (Node.Array, Node.ToGrid), (Node.Array, Node.Kept),
        (Node.FromGrid, Node.Use), (Node.FromGrid, Node.IntoBattery), (Node.OutOfBattery, Node.Use), (Node.OutOfBattery, Node.ToGrid),
    ];

    private static readonly string[] s_names = ["generation", "import", "export", "net import", "charge", "discharge", "held by the battery", "use"];
    private static readonly FlowCut[] s_cuts = [.. Cuts()];
    private static readonly FlowCut[][] s_above = [.. s_arcs.Select((_, arc) => s_cuts.Where(c => c.BoundsFromAbove(arc)).ToArray())];
    private static readonly FlowCut[][] s_below = [.. s_arcs.Select((_, arc) => s_cuts.Where(c => c.BoundsFromBelow(arc)).ToArray())];
    private static readonly FlowCut[] s_whole = [.. s_cuts.Where(c => c.FreeIn.Length == 0)];

    internal static EnergyRange[] RecordsOf(FlowWindow window) =>
    [
        Positive(window.Generation, nameof(window.Generation)), Positive(window.Import, nameof(window.Import)), Positive(window.Export, nameof(window.Export)),
        Ordered(window.NetImport, nameof(window.NetImport)), Positive(window.Charge, nameof(window.Charge)), Positive(window.Discharge, nameof(window.Discharge)),
        Ordered(window.HeldByBattery, nameof(window.HeldByBattery)), Positive(window.Use, nameof(window.Use)),
    ];

    /// <summary>The worst disagreement: what must leave a part of the network less what may enter it; no more than 0 where the records agree.</summary>
    internal static FlowContradiction Contradiction(EnergyRange[] records)
    {
        var worst = new FlowContradiction(double.NegativeInfinity, [], []);
        foreach (var cut in s_whole)
        {
            var byKwh = Sum(records, cut.Out, low: true) - Sum(records, cut.In, low: false);
            if (byKwh > worst.ByKwh) worst = new FlowContradiction(byKwh, [.. cut.Out.Select(a => s_names[a])], [.. cut.In.Select(a => s_names[a])]);
        }
        return worst;
    }

    /// <summary>Lowest and highest of every way, the recorded ones first.</summary>
    internal static EnergyRange[] WaysOf(EnergyRange[] records)
    {
        var ways = new EnergyRange[s_arcs.Length];
        for (var arc = 0; arc < ways.Length; arc++) ways[arc] = BoundsOf(arc, records);
        return ways;
    }

    /// <summary>Cuts each way to what the balances of its two ends leave, until nothing moves: for sums of windows, whose ways are bounded themselves.</summary>
    internal static void Close(EnergyRange[] ways)
    {
        for (var (round, moved) = (0, true); moved && round < s_arcs.Length; round++)
        {
            moved = false;
            for (var node = Node.Outside; node <= Node.Use; node++)
                for (var arc = 0; arc < ways.Length; arc++)
                    if (s_arcs[arc].From == node || s_arcs[arc].To == node) moved |= Cut(ways, arc, node);
        }
    }

    private static bool Cut(EnergyRange[] ways, int arc, Node node)
    {
        var (low, high) = (0.0, 0.0);
        for (var other = 0; other < ways.Length; other++)
        {
            if (other == arc || (s_arcs[other].From != node && s_arcs[other].To != node)) continue;
            var isAgainst = (s_arcs[other].From == node) == (s_arcs[arc].From == node);
            low += isAgainst ? -ways[other].HighKwh : ways[other].LowKwh;
            high += isAgainst ? -ways[other].LowKwh : ways[other].HighKwh;
        }
        var cut = Narrower(ways[arc], new EnergyRange(low, high));
        if (cut.LowKwh <= ways[arc].LowKwh + DustKwh && cut.HighKwh >= ways[arc].HighKwh - DustKwh) return false;
        ways[arc] = cut;
        return true;
    }

    /// <summary>What two ranges have in common; where they miss each other by last digits, the higher low end.</summary>
    internal static EnergyRange Narrower(EnergyRange a, EnergyRange b)
    {
        var low = Math.Max(a.LowKwh, b.LowKwh);
        return new EnergyRange(low, Math.Max(low, Math.Min(a.HighKwh, b.HighKwh)));
    }

    private static EnergyRange BoundsOf(int arc, EnergyRange[] records)
    {
        var (low, high) = arc < records.Length ? (records[arc].LowKwh, records[arc].HighKwh) : (0, double.PositiveInfinity);
        foreach (var cut in s_above[arc]) high = Math.Min(high, Sum(records, cut.In, low: false) - Sum(records, cut.Out, low: true, except: arc));
        foreach (var cut in s_below[arc]) low = Math.Max(low, Sum(records, cut.Out, low: true) - Sum(records, cut.In, low: false, except: arc));
        // Records that agree but for the last digits could cross there.
        return new EnergyRange(low, Math.Max(low, high));
    }

    private static double Sum(EnergyRange[] records, int[] arcs, bool low, int except = -1)
    {
        var sum = 0.0;
        foreach (var arc in arcs)
            if (arc != except) sum += low ? records[arc].LowKwh : records[arc].HighKwh;
        return sum;
    }

    private static IEnumerable<FlowCut> Cuts()
    {
        var nodes = Enum.GetValues<Node>().Length;
        for (var inside = 1; inside < (1 << nodes) - 1; inside++)
        {
            var side = inside;
            bool Leaves((Node From, Node To) a) => (side >> (int)a.From & 1) == 1 && (side >> (int)a.To & 1) == 0;
            bool Enters((Node From, Node To) a) => Leaves((a.To, a.From));
            var cut = new FlowCut(Arcs(Enters, free: false), Arcs(Leaves, free: false), Arcs(Enters, free: true), Arcs(Leaves, free: true));
            // What may enter without limit bounds nothing, but for the one way in question; a side in two pieces says no more than each piece does.
            if (cut.FreeIn.Length <= 1 && HangsTogether(side) && HangsTogether(((1 << nodes) - 1) ^ side)) yield return cut;
        }
    }

    private static bool HangsTogether(int side)
    {
        var reached = side & -side;
        for (var before = 0; reached != before;)
        {
            before = reached;
            foreach (var (from, to) in s_arcs)
            {
                var pair = 1 << (int)from | 1 << (int)to;
                if ((pair & ~side) == 0 && (pair & reached) != 0) reached |= pair;
            }
        }
        return reached == side;
    }

    private static int[] Arcs(Func<(Node From, Node To), bool> crosses, bool free) =>
        [.. Enumerable.Range(0, s_arcs.Length).Where(a => a >= s_names.Length == free && crosses(s_arcs[a]))];

    private static EnergyRange Positive(EnergyRange range, string name) =>
        range.LowKwh >= 0 ? Ordered(range, name) : throw Throw.RangeOfWindow(name, range, "0 or more");

    private static EnergyRange Ordered(EnergyRange range, string name) =>
        range.LowKwh <= range.HighKwh && range.LowKwh < double.PositiveInfinity && range.HighKwh > double.NegativeInfinity
            ? range : throw Throw.RangeOfWindow(name, range, "a low end no higher than the high end");
}
