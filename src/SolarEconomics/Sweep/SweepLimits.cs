namespace SolarEconomics;

/// <summary>What a vector of batteries takes and gives in an interval, with the signs that the loops over a year need.</summary>
internal readonly struct SweepLimits<T>(SweepBlock block, int at)
    where T : struct, ILanes<T>
{
    internal readonly T MostMoved = T.Load(block.MostMovedKwh.AsSpan(at));
    internal readonly T LeastMoved = T.Load(block.LeastMovedKwh.AsSpan(at));
    internal readonly T Usable = T.Load(block.UsableKwh.AsSpan(at));
    internal readonly T Into = T.Load(block.Into.AsSpan(at));
    internal readonly T MinusOutOf = T.Zero - T.Load(block.OutOf.AsSpan(at));
    internal readonly T MinusPerInto = T.Zero - T.Load(block.PerInto.AsSpan(at));
    internal readonly T PerOut = T.Load(block.PerOut.AsSpan(at));
}
