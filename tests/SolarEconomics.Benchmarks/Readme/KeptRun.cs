using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace SolarEconomics.Benchmarks;

/// <summary>Results kept by processor: results/PROCESSOR/ holds ratios.json, start.json, and beside each the versions it ran on.</summary>
internal static partial class KeptRun
{
    private static readonly JsonSerializerOptions s_options = new(JsonSerializerDefaults.Web) { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    internal static string Json<T>(T value) => JsonSerializer.Serialize(value, s_options) + "\n";

    internal static void Keep<T>(string results, Versions versions, string kind, IReadOnlyList<T> lines)
    {
        var folder = Directory.CreateDirectory(Path.Combine(results, NotForNames().Replace(versions.Processor.ToLowerInvariant(), "-").Trim('-'))).FullName;
        File.WriteAllText(Path.Combine(folder, $"{kind}.json"), Json(lines));
        File.WriteAllText(Path.Combine(folder, $"{kind}.versions.json"), Json(versions));
    }

    /// <summary>The lines and versions of one kind kept in a folder; null where none are.</summary>
    internal static (Versions Versions, IReadOnlyList<T> Lines)? Find<T>(string folder, string kind)
    {
        var file = Path.Combine(folder, $"{kind}.json");
        if (!File.Exists(file)) return null;
        return (Read<Versions>(Path.Combine(folder, $"{kind}.versions.json")), Read<List<T>>(file));
    }

    private static T Read<T>(string file) => JsonSerializer.Deserialize<T>(File.ReadAllText(file), s_options)
        ?? throw new InvalidDataException($"{file} holds nothing.");

    [GeneratedRegex("[^a-z0-9]+")]
    private static partial Regex NotForNames();
}
