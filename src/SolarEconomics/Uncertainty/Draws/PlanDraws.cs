using System.Runtime.Intrinsics;

namespace SolarEconomics;

/// <summary>Draws of a yearly plan, a draw to a lane: eight, four or one at a time, each the same bits.</summary>
internal static class PlanDraws
{
    /// <summary>Names of the inputs in the order of their scores.</summary>
    internal static readonly string[] Names = [nameof(YearlyPlan.Investment), nameof(YearlyPlan.YearlyValue), nameof(YearlyPlan.Growth), nameof(YearlyPlan.Ageing)];

    /// <summary>Fills net present values from a first draw on, with the widest vectors that the processor has.</summary>
    internal static void Fill(YearlyPlan plan, double[,]? root, ulong seed, int first, Span<double> npv)
    {
        // Emulated wide vectors are slower than none: only what the processor has.
        if (Vector512.IsHardwareAccelerated) Fill<Words8, Lanes8>(plan, root, seed, first, npv);
        else if (Vector256.IsHardwareAccelerated) Fill<Words4, Lanes4>(plan, root, seed, first, npv);
        else Fill<Words1, Lanes1>(plan, root, seed, first, npv);
    }

    internal static void Fill<TWords, TLanes>(YearlyPlan plan, double[,]? root, ulong seed, int first, Span<double> npv)
        where TWords : struct, IWords<TWords, TLanes>
        where TLanes : struct, ILanes<TLanes>
    {
        var batch = new PlanBatch<TWords, TLanes>(plan, root, seed);
        for (var at = 0; at < npv.Length; at += ScoreBatch<TWords, TLanes>.Draws)
        {
            // The last batch may draw beyond the end: draws depend on their number alone, so what nobody asked for is left.
            var values = batch.Npv((ulong)(first + at));
            values[..Math.Min(values.Length, npv.Length - at)].CopyTo(npv[at..]);
        }
    }
}
