namespace SolarEconomics.Benchmarks;

/// <summary>Times a comparison: one run each in turn, so that a busy moment of the machine falls on all; medians.</summary>
internal static class Referee
{
    private const double ChecksumTolerance = 1e-9;

    internal static IEnumerable<RatioLine> Judge(Comparison comparison, int leastRuns)
    {
        var contenders = comparison.Rivals.Select(r => r.Peer).Where(p => p.Missing is null).Prepend(comparison.Ours).ToList();
        var checksums = contenders.ToDictionary(c => c, c => c.Run().Checksum);
        // Our loops start unoptimised and the peers' do not: two more runs warm both, and a run of milliseconds gets more of them.
        foreach (var contender in contenders) for (var i = 0; i < 2; i++) contender.Run();
        var times = contenders.ToDictionary(c => c, _ => new List<double>());
        for (var run = 0; run < Math.Max(leastRuns, comparison.Runs); run++)
            foreach (var contender in contenders) times[contender].Add(contender.Run().Seconds);
        var ours = Median(times[comparison.Ours]) * 1e9 / comparison.Items;
        foreach (var (peer, target) in comparison.Rivals)
        {
            var line = new RatioLine
            {
                Work = comparison.Work, Per = comparison.Per, Items = comparison.Items, Bytes = comparison.Bytes, HoursOfData = comparison.HoursOfData,
                Baseline = peer.Name, OursNs = ours, Target = target, Missing = peer.Missing, OurChecksum = checksums[comparison.Ours],
            };
            yield return peer.Missing is not null ? line : line with
            {
                BaselineNs = Median(times[peer]) * 1e9 / comparison.Items,
                BaselineChecksum = checksums[peer],
                ChecksumsEqual = Same(checksums[comparison.Ours], checksums[peer]),
            };
        }
    }

    internal static double Median(List<double> values)
    {
        values.Sort();
        var middle = values.Count / 2;
        return values.Count % 2 == 1 ? values[middle] : (values[middle - 1] + values[middle]) / 2;
    }

    private static bool Same(IReadOnlyList<double> ours, IReadOnlyList<double> theirs) =>
        ours.Count == theirs.Count && ours.Count > 0
        && ours.Zip(theirs).All(p => Math.Abs(p.First - p.Second) <= ChecksumTolerance * Math.Max(1, Math.Max(Math.Abs(p.First), Math.Abs(p.Second))));
}
