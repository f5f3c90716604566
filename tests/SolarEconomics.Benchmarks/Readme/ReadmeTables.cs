using System.Globalization;
using System.Text;

namespace SolarEconomics.Benchmarks;

/// <summary>The README's speed section, from the kept results. Compiled into the test too that fails where the README differs.</summary>
internal static class ReadmeTables
{
    private const string From = "<!-- speed: ";
    private const string Until = "<!-- /speed -->";

    /// <summary>The tables of every processor with kept results, in the order of their names.</summary>
    internal static string Of(string results)
    {
        var text = new StringBuilder();
        foreach (var folder in Directory.EnumerateDirectories(results).Order(StringComparer.Ordinal))
        {
            if (KeptRun.Find<RatioLine>(folder, "ratios") is { } ratios) Ratios(text, ratios.Versions, ratios.Lines);
            if (KeptRun.Find<StartLine>(folder, "start") is { } start) Waits(text, start.Versions, start.Lines);
            if (KeptRun.Find<StartLine>(folder, "page") is { } page) OnPage(text, page.Versions, page.Lines);
        }
        return text.ToString();
    }

    /// <summary>The README with its section between the marks replaced.</summary>
    internal static string Placed(string readme, string tables)
    {
        var (start, end) = Marks(readme);
        return readme[..start] + tables + readme[end..];
    }

    /// <summary>What stands between the marks.</summary>
    internal static string Between(string readme)
    {
        var (start, end) = Marks(readme);
        return readme[start..end];
    }

    internal static string MachineSentence(Versions versions)
    {
        var programs = string.Join(", ", versions.Programs.Select(p => $"{p.Key} {p.Value}"));
        var busy = versions.LoadAtStart is > 1 and var load ? string.Create(CultureInfo.InvariantCulture, $" Other work ran on the machine meanwhile (load {load:0.0}).") : "";
        return $"{versions.Date}, {versions.Processor}, {versions.Cores} cores, {versions.VectorBits}-bit vectors, {versions.System}; {programs}.{busy}";
    }

    private static (int Start, int End) Marks(string readme)
    {
        var from = readme.IndexOf(From, StringComparison.Ordinal);
        var until = readme.IndexOf(Until, StringComparison.Ordinal);
        if (from < 0 || until < from) throw new InvalidDataException($"Found no \"{From}…\" before \"{Until}\" in the README, expected both: the speed table stands between them.");
        return (readme.IndexOf('\n', from) + 1, until);
    }

    private static void Ratios(StringBuilder text, Versions versions, IReadOnlyList<RatioLine> lines)
    {
        text.Append("Everyone on one thread, on the same input in the same run, with equal results; medians. Measure your own machine with\n"
            + "`dotnet run -c Release --project tests/SolarEconomics.Benchmarks -- ratios`.\n\n");
        text.Append("| work | here | beside | times as fast | aim |\n| --- | --- | --- | --- | --- |\n");
        var before = "";
        foreach (var line in lines)
        {
            var isFirst = line.Work != before;
            before = line.Work;
            text.Append(CultureInfo.InvariantCulture, $"| {(isFirst ? line.Work : "")} | {(isFirst ? Here(line) : "")} | {Beside(line)} | {Times(line.Ratio)} | {Aim(line)} |\n");
        }
        text.Append('\n').Append(MachineSentence(versions)).Append('\n');
    }

    private static void Waits(StringBuilder text, Versions versions, IReadOnlyList<StartLine> lines)
    {
        text.Append("\n| wait | seconds | limit |\n| --- | --- | --- |\n");
        foreach (var line in lines)
            text.Append(CultureInfo.InvariantCulture, $"| {line.What} | {line.Seconds:0.00} | {(line.LimitSeconds is { } limit ? limit.ToString("0.0", CultureInfo.InvariantCulture) : "")} |\n");
        text.Append('\n').Append(MachineSentence(versions)).Append('\n');
    }

    private static void OnPage(StringBuilder text, Versions versions, IReadOnlyList<StartLine> lines)
    {
        text.Append("\n| on the page, in Chromium | here | limit |\n| --- | --- | --- |\n");
        foreach (var line in lines)
            text.Append(CultureInfo.InvariantCulture, $"| {line.What} | {Words.Time(line.Seconds)} | {(line.LimitSeconds is { } limit ? Words.Time(limit) + (line.Seconds <= limit ? ", met" : ", missed") : "")} |\n");
        text.Append('\n').Append(MachineSentence(versions)).Append('\n');
    }

    private static string Here(RatioLine line)
    {
        var seconds = line.OursNs * line.Items / 1e9;
        var here = line.Per is "rate" ? Words.Time(line.OursNs / 1e9) + " each" : Words.Time(seconds);
        if (line.Bytes > 0) here += string.Create(CultureInfo.InvariantCulture, $", {line.Bytes / seconds / 1e6:#,0} MB/s");
        if (line.PerSecondTarget is { } rate)
            here += string.Create(CultureInfo.InvariantCulture, $", {1e9 / line.OursNs:#,0} {line.Per}s a second (aim {rate:#,0}, {(1e9 / line.OursNs >= rate ? "met" : "missed")})");
        if (line.HoursOfData > 0) here += $", {Words.Count((long)(line.HoursOfData / seconds))} hours of data per second";
        return here;
    }

    private static string Beside(RatioLine line) => line.Missing is not null ? $"{line.Baseline}: {line.Missing}"
        : $"{line.Baseline}: {Words.Time(line.BaselineNs!.Value * (line.Per is "rate" ? 1 : line.Items) / 1e9)}";

    private static string Times(double? ratio) => ratio?.ToString(ratio >= 10 ? "0" : "0.0#", CultureInfo.InvariantCulture) ?? "";

    private static string Aim(RatioLine line)
    {
        if (line.Target is null) return "";
        var aim = line.TargetHere == line.Target
            ? Times(line.Target)
            : string.Create(CultureInfo.InvariantCulture, $"{Times(line.Target)} with {line.TargetVectorBits}-bit vectors, {Times(line.TargetHere)} with {line.VectorBits}");
        return line.Met switch
        {
            null => aim,
            true => aim + ", met",
            false => aim + (line.ChecksumsEqual ? ", missed" : ", results differ"),
        };
    }
}
