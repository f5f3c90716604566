namespace SolarEconomics;

/// <summary>The arcs of the flow network that cross the edge of a set of nodes: what enters it must leave it.</summary>
/// <param name="In">Recorded arcs that enter.</param>
/// <param name="Out">Recorded arcs that leave.</param>
/// <param name="FreeIn">Unrecorded arcs that enter, 0 or more and without limit.</param>
/// <param name="FreeOut">Unrecorded arcs that leave; at least 0, so they add nothing to what must leave.</param>
internal sealed record FlowCut(int[] In, int[] Out, int[] FreeIn, int[] FreeOut)
{
    /// <summary>An arc that leaves can carry no more than may enter.</summary>
    internal bool BoundsFromAbove(int arc) => FreeIn.Length == 0 && (Out.Contains(arc) || FreeOut.Contains(arc));

    /// <summary>An arc that enters must bring what has to leave and cannot enter otherwise.</summary>
    internal bool BoundsFromBelow(int arc) => FreeIn.Length == 0 ? In.Contains(arc) : FreeIn[0] == arc;
}
