using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;

namespace SolarEconomics;

/// <summary>Writes an inspection as JSON: fixed names in a fixed order, for programs.</summary>
internal static class InspectionJson
{
    private static readonly JsonWriterOptions Readable = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    internal static string Write(Inspection inspection)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Readable))
        {
            json.WriteStartObject();
            json.WriteStartArray("files");
            foreach (var file in inspection.Files) Write(json, file);
            json.WriteEndArray();
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void Write(Utf8JsonWriter json, InspectedFile file)
    {
        json.WriteStartObject();
        json.WriteString("file", file.File);
        json.WriteString("format", file.Format);
        json.WriteStartArray("channels");
        foreach (var channel in file.Channels) Write(json, channel);
        json.WriteEndArray();
        json.WriteNumber("localDays", file.LocalDays);
        WriteDays(json, "shortDays", file.ShortDays);
        WriteDays(json, "longDays", file.LongDays);
        json.WriteStartArray("problems");
        foreach (var problem in file.Problems) Write(json, problem);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, InspectedChannel channel)
    {
        json.WriteStartObject();
        json.WriteString("name", channel.Name);
        json.WriteString("flow", FlowWord(channel.Flow));
        json.WriteString("unit", channel.Unit);
        json.WriteNumber("readings", channel.Readings);
        WriteInstant(json, "start", channel.Start);
        WriteInstant(json, "end", channel.End);
        json.WritePropertyName("totalKwh");
        // At least six decimals, as people compare totals digit by digit.
        if (channel.TotalKwh is { } kwh) json.WriteRawValue(kwh.ToString("0.000000###", CultureInfo.InvariantCulture));
        else json.WriteNullValue();
        json.WriteNumber("missing", channel.Missing);
        json.WriteNumber("estimated", channel.Estimated);
        json.WriteNumber("repeated", channel.Repeated);
        json.WriteNumber("negative", channel.Negative);
        json.WriteNumber("resets", channel.Resets);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Problem problem)
    {
        json.WriteStartObject();
        json.WriteNumber("line", problem.Line);
        json.WriteNumber("column", problem.Column);
        json.WriteString("raw", problem.Raw);
        json.WriteString("found", problem.Found);
        json.WriteString("expected", problem.Expected);
        json.WriteString("severity", problem.Severity switch { Severity.Lost => "lost", Severity.Doubtful => "doubtful", _ => "note" });
        json.WriteEndObject();
    }

    /// <summary>The words of the format; flows of a battery are none of them.</summary>
    private static string FlowWord(FlowKind flow) => flow switch
    {
        FlowKind.Import => "import",
        FlowKind.Export => "export",
        FlowKind.Generation => "generation",
        FlowKind.Use => "use",
        _ => "unknown",
    };

    private static void WriteInstant(Utf8JsonWriter json, string name, Instant? instant)
    {
        if (instant is { } value) json.WriteString(name, InstantPattern.ExtendedIso.Format(value));
        else json.WriteNull(name);
    }

    private static void WriteDays(Utf8JsonWriter json, string name, IReadOnlyList<LocalDate> days)
    {
        json.WriteStartArray(name);
        foreach (var day in days) json.WriteStringValue(LocalDatePattern.Iso.Format(day));
        json.WriteEndArray();
    }
}
