using BenchmarkDotNet.Attributes;

namespace SolarEconomics.Benchmarks;

/// <summary>Time and memory of one internal rate of return.</summary>
[MemoryDiagnoser]
public class RateBenchmarks
{
    private double[] _flow = [];

    [GlobalSetup]
    public void Make() => _flow = RatesOfReturn.Make(1).Flows;

    [Benchmark(Baseline = true)]
    public double Ours() => TimeValue.Irr(_flow);

    [Benchmark]
    public double MathNetRoots() => RatesOfReturn.ByMathNet(_flow);
}
