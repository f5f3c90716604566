using System.Text.Json;

namespace SolarEconomics;

/// <content>Messages of reading our own JSON files.</content>
internal static partial class Throw
{
    internal static RecordException JsonMissing(string path, string kind) =>
        new($"{path}: found no such file, expected {kind}. Looked in {Path.GetFullPath(path)}.");

    internal static RecordException JsonUnreadable(string path, string kind, Exception why) =>
        new($"{path}: found a file that cannot be opened ({why.Message}), expected {kind}.");

    internal static RecordException JsonEmpty(string path, string kind) =>
        new($"{path}: found an empty file, expected {kind}.");

    internal static RecordException NotJson(string path, string kind, JsonException why) => new(FormattableString.Invariant(
        $"{path}, line {(why.LineNumber ?? 0) + 1}, column {(why.BytePositionInLine ?? 0) + 1}: found text that is not JSON, expected {kind}. ") +
        "Often a comma, a bracket or a quotation mark is missing just before that place.");

    internal static RecordException JsonMistakes(string path, IReadOnlyList<Problem> problems) =>
        new(problems.Count == 1
            ? problems[0].Sentence
            : FormattableString.Invariant($"{path}: found {problems.Count} mistakes:") + Environment.NewLine +
              string.Join(Environment.NewLine, problems.Select(p => $"  {p.Sentence}")), problems);

    internal static RecordException JsonNewer(string path, int version, int known) => new(FormattableString.Invariant(
        $"{path}: found version {version}, expected {known}: the file was written by a newer version of this library. Update the library."));
}
