using BenchmarkDotNet.Attributes;

namespace SolarEconomics.Benchmarks;

/// <summary>Time and memory of turning 100,000 local times in text into instants.</summary>
[MemoryDiagnoser]
public class StampBenchmarks
{
    private string[] _stamps = [];

    [GlobalSetup]
    public void Make() => _stamps = MadeTable.Of(100_000).Stamps;

    [Benchmark(Baseline = true)]
    public long[] Ours() => StampToInstant.Ours(_stamps);

    [Benchmark]
    public long[] NodaTimePattern() => StampToInstant.ByNodaTime(_stamps);
}
