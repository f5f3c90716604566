namespace SolarEconomics.Benchmarks;

/// <summary>What a rival reads from an interval table: local time and three numbers, with no zone, no check and no list of gaps.</summary>
internal sealed class LocalColumns
{
    internal List<long> LocalMinutes { get; } = [];

    internal List<double> ImportKwh { get; } = [];

    internal List<double> ExportKwh { get; } = [];

    internal List<double> GenerationKwh { get; } = [];

    internal void Add(long localMinute, double importKwh, double exportKwh, double generationKwh)
    {
        LocalMinutes.Add(localMinute);
        ImportKwh.Add(importKwh);
        ExportKwh.Add(exportKwh);
        GenerationKwh.Add(generationKwh);
    }
}
