using System.Runtime.CompilerServices;

namespace SolarEconomics;

/// <summary>A year of several batteries side by side: <see cref="BatteryLoop"/> in vector lanes, with two vectors in flight to hide the wait of each chain.</summary>
internal static class SweepYear<T>
    where T : struct, ILanes<T>
{
    /// <summary>Slots of a block: one call works all of them through.</summary>
    internal static int Slots => 2 * T.Width;

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Run(SweepSeries series, SweepBlock block)
    {
        var (a, b) = (new Constants(block, 0), new Constants(block, T.Width));
        var (storedA, storedB) = (T.Load(block.StoredKwh.AsSpan()), T.Load(block.StoredKwh.AsSpan(T.Width)));
        T earnedA = T.Zero, earnedB = T.Zero, importA = T.Zero, importB = T.Zero, drawnA = T.Zero, drawnB = T.Zero;
        foreach (var hour in series.Hours)
        {
            var (sun, use, spreadNow, exportNow) = (T.Of(hour.SunKwh), T.Of(hour.UseKwh), T.Of(hour.SpreadPerKwh), T.Of(hour.ExportPerKwh));
            Step(in a, sun, use, spreadNow, exportNow, ref storedA, ref earnedA, ref importA, ref drawnA);
            Step(in b, sun, use, spreadNow, exportNow, ref storedB, ref earnedB, ref importB, ref drawnB);
        }
        block.Write(0, storedA, earnedA, importA, drawnA);
        block.Write(T.Width, storedB, earnedB, importB, drawnB);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Step(in Constants c, T sun, T use, T spread, T export, ref T stored, ref T earned, ref T import, ref T drawn)
    {
        var net = T.MultiplyAdd(sun, c.SunScale, T.MultiplyAdd(use, c.MinusUseScale, c.MinusStandby));
        // What a kWh moves inside the cells: into < 1 < perOut, so the smaller product is the right one on both sides of zero.
        var wish = T.MinNative(net * c.Limits.Into, net * c.Limits.PerOut);
        var moved = T.MinNative(T.MaxNative(wish, c.Limits.LeastMoved), c.Limits.MostMoved);
        var after = T.MinNative(T.MaxNative(stored + moved, T.Zero), c.Limits.Usable);
        var change = after - stored;
        stored = after;
        var gain = T.MaxNative(change, T.Zero);
        var loss = change - gain;
        var grid = T.MultiplyAdd(gain, c.Limits.MinusPerInto, T.MultiplyAdd(loss, c.Limits.MinusOutOf, net));
        // Import is what of the grid flow is below zero: export · paid − import · price = below · (price − paid) + grid · paid.
        var below = T.MinNative(grid, T.Zero);
        earned = T.MultiplyAdd(below, spread, T.MultiplyAdd(grid, export, earned));
        import = import - below;
        drawn = drawn - loss;
    }

    private readonly struct Constants(SweepBlock block, int at)
    {
        internal readonly T SunScale = T.Load(block.SunScale.AsSpan(at));
        internal readonly T MinusUseScale = T.Zero - T.Load(block.UseScale.AsSpan(at));
        internal readonly T MinusStandby = T.Zero - T.Load(block.StandbyKwh.AsSpan(at));
        internal readonly SweepLimits<T> Limits = new(block, at);
    }
}
