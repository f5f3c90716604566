using System.Diagnostics;

namespace SolarEconomics.Benchmarks;

/// <summary>Times a comparison: one run each in turn, so that a busy moment of the machine falls on all; medians.</summary>
internal static class Referee
{
    private const double ChecksumTolerance = 1e-9;
    private const int MostRuns = 25;
    private static readonly TimeSpan s_enough = TimeSpan.FromSeconds(3);

    internal static IEnumerable<RatioLine> Judge(Comparison comparison, int leastRuns)
    {
        var contenders = comparison.Rivals.Select(r => r.Peer).Where(p => p.Missing is null).Prepend(comparison.Ours).ToList();
        var checksums = contenders.ToDictionary(c => c, WarmUp);
        var times = contenders.ToDictionary(c => c, _ => new List<double>());
        var begin = Stopwatch.GetTimestamp();
        for (var run = 0; run < Math.Max(leastRuns, comparison.Runs) || (run < MostRuns && Stopwatch.GetElapsedTime(begin) < s_enough); run++)
            foreach (var contender in contenders) times[contender].Add(contender.Run().Seconds);
        var ours = Median(times[comparison.Ours]) * 1e9 / comparison.Items;
        foreach (var (peer, target) in comparison.Rivals)
        {
            var line = new RatioLine
            {
                Work = comparison.Work, Per = comparison.Per, Items = comparison.Items, Bytes = comparison.Bytes, HoursOfData = comparison.HoursOfData,
                Baseline = peer.Name, OursNs = ours, Target = target, Missing = peer.Missing, OurChecksum = checksums[comparison.Ours],
                TargetVectorBits = comparison.TargetVectorBits, VectorBits = BatterySweep.VectorBits, PerSecondTarget = comparison.PerSecondTarget,
            };
            yield return peer.Missing is not null ? line : line with
            {
                BaselineNs = Median(times[peer]) * 1e9 / comparison.Items,
                BaselineChecksum = checksums[peer],
                ChecksumsEqual = Same(checksums[comparison.Ours], checksums[peer], comparison.ByChance),
            };
        }
    }

    internal static double Median(List<double> values)
    {
        values.Sort();
        var middle = values.Count / 2;
        return values.Count % 2 == 1 ? values[middle] : (values[middle - 1] + values[middle]) / 2;
    }

    /// <summary>Runs for a second before the clock counts: the runtime optimises a loop only after it was seen to be hot. Fresh processes are cold by intent.</summary>
    private static IReadOnlyList<double> WarmUp(Contender contender)
    {
        var checksum = contender.Run().Checksum;
        var begin = Stopwatch.GetTimestamp();
        while (contender is not ColdProcess && Stopwatch.GetElapsedTime(begin) < TimeSpan.FromSeconds(1)) contender.Run();
        return checksum;
    }

    private static bool Same(IReadOnlyList<double> ours, IReadOnlyList<double> theirs, double byChance) =>
        ours.Count == theirs.Count && ours.Count > 0
        && ours.Zip(theirs).All(p => Math.Abs(p.First - p.Second) <= byChance + ChecksumTolerance * Math.Max(1, Math.Max(Math.Abs(p.First), Math.Abs(p.Second))));
}
