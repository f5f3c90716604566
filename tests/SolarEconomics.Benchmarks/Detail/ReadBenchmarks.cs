using BenchmarkDotNet.Attributes;

namespace SolarEconomics.Benchmarks;

/// <summary>Time and memory of reading an interval table. BenchmarkDotNet needs public, unsealed classes.</summary>
[MemoryDiagnoser]
public class ReadBenchmarks
{
    private string _path = "";

    [Params(100_000)]
    public int Rows { get; set; }

    [GlobalSetup]
    public void Make() => _path = MadeTable.Of(Rows).Path;

    [Benchmark(Baseline = true)]
    public object Ours() => IntervalCsv.Read(_path);

    [Benchmark]
    public object Sep() => SepReader.Read(_path);

    [Benchmark]
    public object CsvHelperRecords() => CsvHelperReader.ReadRecords(_path);

    [Benchmark]
    public object CsvHelperRaw() => CsvHelperReader.ReadRaw(_path);
}
