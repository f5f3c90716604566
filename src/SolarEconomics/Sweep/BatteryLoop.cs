namespace SolarEconomics;

/// <summary>One battery, one scenario, no branch: the loop behind a slider.</summary>
/// <remarks>The wish is cut to the power first, then the charge to the store's limits, and what passed the terminals is recovered from the change of charge: so the
/// chain from one interval to the next is an addition and two comparisons. Numbers are finite by the checks before; the native minimum and maximum need no care for others.</remarks>
internal static class BatteryLoop
{
    internal static void Run(ReadOnlySpan<double> sunKwh, ReadOnlySpan<double> useKwh, double stepHours, in BatteryNumbers battery, BatteryTrace trace)
    {
        Span<double> storedKwh = trace.StoredKwh;
        var count = storedKwh.Length;
        sunKwh = sunKwh[..count];
        useKwh = useKwh[..count];
        var importKwh = trace.ImportKwh.AsSpan(0, count);
        var exportKwh = trace.ExportKwh.AsSpan(0, count);
        var (most, least, usable) = (battery.MostChargeKw * stepHours, -battery.MostDischargeKw * stepHours, battery.UsableKwh);
        var (into, outOf, perInto, perOut) = (battery.Into, battery.OutOf, 1 / battery.Into, 1 / battery.OutOf);
        var stored = battery.StoredAtStartKwh;
        for (var i = 0; i < count; i++)
        {
            var net = sunKwh[i] - useKwh[i];
            var want = double.MinNative(double.MaxNative(net, least), most);
            var up = double.MaxNative(want, 0);
            var after = double.MinNative(double.MaxNative(stored + ((up * into) + ((want - up) * perOut)), 0), usable);
            var change = after - stored;
            var gain = double.MaxNative(change, 0);
            var grid = net - (gain * perInto) - ((change - gain) * outOf);
            var export = double.MaxNative(grid, 0);
            exportKwh[i] = export;
            importKwh[i] = export - grid;
            storedKwh[i] = stored = after;
        }
    }
}
