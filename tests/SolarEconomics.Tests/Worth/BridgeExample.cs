namespace SolarEconomics.Tests;

/// <summary>CV-A01: yearly value v = (10,000 − 1,000 L − 3,500 X)·p + 3,500·0.08·X, p 0.30, or 0.24 with P. Bits: L, X, P.</summary>
internal static class BridgeExample
{
    internal static readonly BridgeRuns Runs = new(3, YearlyValue);

    internal static decimal YearlyValue(uint subset)
    {
        var (lost, exported, price) = ((subset & 1) != 0, (subset & 2) != 0, (subset & 4) != 0);
        var kwh = 10_000m - (lost ? 1_000 : 0) - (exported ? 3_500 : 0);
        return (kwh * (price ? 0.24m : 0.30m)) + (exported ? 3_500 * 0.08m : 0);
    }
}
