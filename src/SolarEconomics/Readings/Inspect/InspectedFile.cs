using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;

namespace SolarEconomics;

/// <summary>What one file holds, or why it could not be read.</summary>
/// <param name="File">Path as the user gave it.</param>
/// <param name="Format">Name of the format; <c>unknown</c> where it could not be read.</param>
/// <param name="Channels">Its channels, one per meter, suffix and flow; empty where it could not be read.</param>
/// <param name="Problems">What was found on the way, in the order of discovery.</param>
public sealed partial record InspectedFile(string File, string Format, IReadOnlyList<InspectedChannel> Channels, IReadOnlyList<Problem> Problems)
{
    /// <summary>How many local days the readings touch.</summary>
    public int LocalDays { get; private init; }

    /// <summary>Those of them that are shorter than 24 hours on the clock used.</summary>
    public IReadOnlyList<LocalDate> ShortDays { get; private init; } = [];

    /// <summary>Those of them that are longer than 24 hours on the clock used.</summary>
    public IReadOnlyList<LocalDate> LongDays { get; private init; } = [];

    /// <summary>Clock by which local days are counted; <see langword="null"/> where the file could not be read.</summary>
    public DateTimeZone? Clock { get; private init; }

    /// <summary>How the columns of a table were understood, with reasons.</summary>
    public IReadOnlyList<ColumnMeaning> Columns { get; private init; } = [];

    /// <summary>0 read; 1 read, with values lost; 2 not readable.</summary>
    public int ExitCode => Channels.Count == 0 ? 2 : Problems.Any(p => p.Severity == Severity.Lost) ? 1 : 0;

    /// <summary>Looks at one file. What cannot be read is a problem in the result, not an exception.</summary>
    internal static InspectedFile Of(string path, ReadOptions options)
    {
        try
        {
            return Of(RecordReaders.Read(path, options));
        }
        catch (RecordException e)
        {
            return Unreadable(path, e.Message, e.Problems);
        }
        catch (UnknownNameException e)
        {
            return Unreadable(path, e.Message, []);
        }
    }

    internal static InspectedFile Unreadable(string path, string message, IReadOnlyList<Problem> problems)
    {
        var parts = Parts().Match(message);
        var line = parts.Groups["line"] is { Success: true } number ? int.Parse(number.Value, CultureInfo.InvariantCulture) : 0;
        var problem = parts.Success
            ? new Problem(path, line, 0, "", parts.Groups["found"].Value, parts.Groups["expected"].Value, Severity.Lost)
            : new Problem(path, 0, 0, "", message, "a file that can be read", Severity.Lost);
        return new InspectedFile(path, "unknown", [], [problem, .. problems]);
    }

    /// <summary>The parts of which every message of a refused record consists.</summary>
    [GeneratedRegex(@"^(.*?, line (?<line>\d{1,9}))?.*?found (?<found>.*?)[,;] expected (?<expected>.*)$", RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase | RegexOptions.Singleline, 1000)]
    private static partial Regex Parts();

    private static InspectedFile Of(RecordContent content)
    {
        var days = TouchedDays.Of(content);
        return new InspectedFile(content.File, content.Format,
            [.. content.Channels.Select(InspectedChannel.Of), .. content.Counters.Select(c => InspectedChannel.Of(c, content.Clock))], content.Problems)
        {
            LocalDays = days.Count,
            ShortDays = [.. days.Where(d => SolarEconomics.LocalDays.LengthOf(d, content.Clock) < Duration.FromHours(24))],
            LongDays = [.. days.Where(d => SolarEconomics.LocalDays.LengthOf(d, content.Clock) > Duration.FromHours(24))],
            Clock = content.Clock,
            Columns = content.Columns,
        };
    }
}
