using System.Runtime.Intrinsics;

namespace SolarEconomics;

/// <content>Many cases over many years, in vector lanes.</content>
public sealed partial class BatterySweep
{
    private const int MostYears = 100;

    /// <summary>Bits of the vectors in use here: 512, 256, or 64 where there are none.</summary>
    public static int VectorBits => Vector512.IsHardwareAccelerated ? 512 : Vector256.IsHardwareAccelerated ? 256 : 64;

    /// <summary>Works out cases over some years.</summary>
    /// <param name="cases">The cases, any number.</param>
    /// <param name="years">Years. Range: 1 to 100.</param>
    /// <param name="progress">Receives the share done, 0 to 1, after each handful of cases. Default: nobody.</param>
    /// <param name="cancellation">Ends the work within one year of a handful of cases, some milliseconds however many years there are.</param>
    /// <returns>One result per case, in their order.</returns>
    /// <exception cref="ArgumentException">A battery has what a sweep does not know, named in the message, or several years are asked of conditions that are no year.</exception>
    public IReadOnlyList<BatteryCaseResult> Run(IReadOnlyList<BatteryCase> cases, int years, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(cases);
        Require.Within(years, 1, MostYears, "years");
        DemandYear(years);
        var all = Enumerable.Range(1, years).ToArray();
        return Vector512.IsHardwareAccelerated ? Run<Lanes8>(cases, all, years, progress, cancellation)
            : Vector256.IsHardwareAccelerated ? Run<Lanes4>(cases, all, years, progress, cancellation)
            : Run<Lanes1>(cases, all, years, progress, cancellation);
    }

    /// <summary>A first answer while a slider moves: four representative years are worked out, the others lie on straight lines between them.</summary>
    /// <param name="cases">The cases.</param>
    /// <param name="years">Years. Range: 1 to 100.</param>
    /// <param name="cancellation">Ends the work within one year of a handful of cases.</param>
    /// <returns>Results marked <see cref="BatteryCaseResult.IsPreview"/>; of four years or fewer, the full ones.</returns>
    public IReadOnlyList<BatteryCaseResult> Preview(IReadOnlyList<BatteryCase> cases, int years, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(cases);
        if (years <= 4) return Run(cases, years, null, cancellation);
        Require.Within(years, 1, MostYears, "years");
        DemandYear(years);
        int[] some = [1, (years + 2) / 3, ((2 * years) + 1) / 3, years];
        return Vector512.IsHardwareAccelerated ? Run<Lanes8>(cases, some, years, null, cancellation)
            : Vector256.IsHardwareAccelerated ? Run<Lanes4>(cases, some, years, null, cancellation)
            : Run<Lanes1>(cases, some, years, null, cancellation);
    }

    /// <summary>Any width, so that tests can hold them against each other.</summary>
    internal IReadOnlyList<BatteryCaseResult> Run<T>(IReadOnlyList<BatteryCase> cases, int[] worked, int years, IProgress<double>? progress, CancellationToken cancellation)
        where T : struct, ILanes<T>
    {
        foreach (var one in cases) ArgumentNullException.ThrowIfNull(one, nameof(cases));
        var slots = SweepYear<T>.Slots;
        var results = new BatteryCaseResult[cases.Count];
        var order = NeighboursTogether(cases);
        using var work = WorkProgress.Begin(progress);
        for (var from = 0; from < results.Length; from += slots)
        {
            var futures = new SweepFutures(cases, order.AsMemory(from, Math.Min(slots, results.Length - from)), slots, _series, worked, years);
            foreach (var year in worked)
            {
                cancellation.ThrowIfCancellationRequested();
                futures.Begin(year);
                if (futures.Block.SharesNetFlow) SweepYearShared<T>.Run(_series, futures.Block);
                else SweepYear<T>.Run(_series, futures.Block);
                futures.End(year);
            }
            futures.WriteTo(results);
            work.Report((double)Math.Min(results.Length, from + slots) / results.Length);
        }
        return results;
    }

    /// <summary>The cases in an order in which those behind the same net flow stand side by side.</summary>
    private static int[] NeighboursTogether(IReadOnlyList<BatteryCase> cases)
    {
        var order = Enumerable.Range(0, cases.Count).ToArray();
        var flows = Array.ConvertAll(order, i => NetFlowOf(cases[i]));
        // Equal ones keep their order, so that the results of a block do not depend on how the sort breaks ties.
        return Array.TrueForAll(flows, f => f == flows[0]) ? order : [.. order.OrderBy(i => flows[i])];
    }

    /// <summary>All that makes a case's net flow out of the shared series.</summary>
    private static (double Sun, double Use, double Loss, double Growth, double StandbyW) NetFlowOf(BatteryCase c) =>
        (c.SunScale, c.UseScale, c.SunLossPerYear, c.UseGrowth, c.Battery.StandbyW);
}
