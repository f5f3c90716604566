using System.Runtime.CompilerServices;

namespace SolarEconomics;

/// <summary>A year of several batteries behind one and the same net flow (sun less use and standby), two vectors in flight.</summary>
/// <remarks>Where all slots share the net flow its sign is known before the lanes: an hour either charges or discharges, and half of the work of
/// <see cref="SweepYear{T}"/> falls away. Both give the same numbers up to rounding; a test holds each against the plain loop.</remarks>
internal static class SweepYearShared<T>
    where T : struct, ILanes<T>
{
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Run(SweepSeries series, SweepBlock block)
    {
        var (sunScale, minusUseScale, minusStandby) = (block.SunScale[0], -block.UseScale[0], -block.StandbyKwh[0]);
        var (a, b) = (new SweepLimits<T>(block, 0), new SweepLimits<T>(block, T.Width));
        var (storedA, storedB) = (T.Load(block.StoredKwh.AsSpan()), T.Load(block.StoredKwh.AsSpan(T.Width)));
        T earnedA = T.Zero, earnedB = T.Zero, importA = T.Zero, importB = T.Zero, drawnA = T.Zero, drawnB = T.Zero;
        foreach (var hour in series.Hours)
        {
            // The same two operations as in the lanes of their own, so that both ways see the same net flow to the last bit.
            var net = double.FusedMultiplyAdd(hour.SunKwh, sunScale, double.FusedMultiplyAdd(hour.UseKwh, minusUseScale, minusStandby));
            var everywhere = T.Of(net);
            if (net > 0)
            {
                var paid = T.Of(hour.ExportPerKwh);
                Charge(a, everywhere, paid, ref storedA, ref earnedA);
                Charge(b, everywhere, paid, ref storedB, ref earnedB);
            }
            else
            {
                var price = T.Of(hour.SpreadPerKwh + hour.ExportPerKwh);
                Discharge(a, everywhere, price, ref storedA, ref earnedA, ref importA, ref drawnA);
                Discharge(b, everywhere, price, ref storedB, ref earnedB, ref importB, ref drawnB);
            }
        }
        block.Write(0, storedA, earnedA, importA, drawnA);
        block.Write(T.Width, storedB, earnedB, importB, drawnB);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Charge(in SweepLimits<T> limits, T net, T paid, ref T stored, ref T earned)
    {
        var after = T.MinNative(stored + T.MinNative(net * limits.Into, limits.MostMoved), limits.Usable);
        var exported = T.MultiplyAdd(after - stored, limits.MinusPerInto, net);
        earned = T.MultiplyAdd(exported, paid, earned);
        stored = after;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Discharge(in SweepLimits<T> limits, T net, T price, ref T stored, ref T earned, ref T import, ref T drawn)
    {
        var after = T.MaxNative(stored + T.MaxNative(net * limits.PerOut, limits.LeastMoved), T.Zero);
        var change = after - stored;
        // Import as a negative number: what the store does not give of a net flow below zero.
        var grid = T.MultiplyAdd(change, limits.MinusOutOf, net);
        earned = T.MultiplyAdd(grid, price, earned);
        import -= grid;
        drawn -= change;
        stored = after;
    }
}
