using NodaTime;

namespace SolarEconomics;

/// <summary>What one file holds, or why it could not be read.</summary>
/// <param name="File">Path as the user gave it.</param>
/// <param name="Format">Name of the format; <c>unknown</c> where it could not be read.</param>
/// <param name="Channels">Its channels, one per meter, suffix and flow; empty where it could not be read.</param>
/// <param name="Problems">What was found on the way, in the order of discovery.</param>
public sealed record InspectedFile(string File, string Format, IReadOnlyList<InspectedChannel> Channels, IReadOnlyList<Problem> Problems)
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
            return Unreadable(path, e);
        }
        catch (UnknownNameException e)
        {
            return Unreadable(path, e);
        }
    }

    /// <summary>A file that was refused: the reason first, with its place, then what was found before.</summary>
    private static InspectedFile Unreadable(string path, RecordException why) =>
        Unreadable(path, why.Reason ?? new Problem(path, 0, 0, "", why.Message, "a file that can be read", Severity.Lost), why.Problems);

    /// <summary>A file that was not read because something was named that is not there.</summary>
    internal static InspectedFile Unreadable(string path, UnknownNameException why)
    {
        const string Between = ", expected ";
        var at = why.Message.IndexOf(Between, StringComparison.Ordinal);
        return Unreadable(path, at < 0
            ? new Problem(path, 0, 0, "", why.Message, "a name that is known", Severity.Lost)
            : new Problem(path, 0, 0, "", why.Message[..at].Replace("Found ", "", StringComparison.Ordinal), why.Message[(at + Between.Length)..], Severity.Lost), []);
    }

    private static InspectedFile Unreadable(string path, Problem reason, IReadOnlyList<Problem> problems) => new(path, "unknown", [], [reason, .. problems]);

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
