using System.Globalization;
using System.Text;

namespace SolarEconomics.Benchmarks;

/// <summary>The ratio table as text for a terminal.</summary>
internal static class RatioTable
{
    internal static string Of(Versions versions, IReadOnlyList<RatioLine> lines)
    {
        var text = new StringBuilder();
        text.AppendLine(ReadmeTables.MachineSentence(versions));
        text.AppendLine();
        Row(text, "work", "baseline", "ns/item", "ours", "ratio", "target", "met", "checksums");
        foreach (var line in lines)
        {
            var equal = line.Missing is not null ? "-" : line.ChecksumsEqual ? "equal" : "DIFFER";
            Row(text, $"{line.Work} ({line.Per})", line.Missing is null ? line.Baseline : $"{line.Baseline}: {line.Missing}",
                Figure(line.BaselineNs), Figure(line.OursNs), Figure(line.Ratio), Figure(line.TargetHere), line.Met switch { true => "yes", false => "no", null => "-" }, equal);
        }
        foreach (var line in lines.Where(l => l is { Missing: null, ChecksumsEqual: false }))
            text.AppendLine(CultureInfo.InvariantCulture, $"{line.Work}: ours {Sums(line.OurChecksum)}, {line.Baseline} {Sums(line.BaselineChecksum)}");
        return text.ToString();
    }

    private static string Sums(IEnumerable<double> checksum) => string.Join(' ', checksum.Select(n => n.ToString("R", CultureInfo.InvariantCulture)));

    private static string Figure(double? value) => value switch
    {
        null => "-",
        >= 1e6 => value.Value.ToString("#,0", CultureInfo.InvariantCulture),
        >= 100 => value.Value.ToString("0", CultureInfo.InvariantCulture),
        >= 1 => value.Value.ToString("0.0#", CultureInfo.InvariantCulture),
        _ => value.Value.ToString("0.000", CultureInfo.InvariantCulture),
    };

    private static void Row(StringBuilder text, params ReadOnlySpan<string> cells) =>
        text.AppendLine($"{cells[0],-62} {cells[1],-50} {cells[2],12} {cells[3],12} {cells[4],8} {cells[5],7} {cells[6],4} {cells[7],9}");
}
