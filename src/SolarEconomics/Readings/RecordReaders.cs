namespace SolarEconomics;

/// <summary>The registry of readers, asked in order: the first that recognises a file reads it.</summary>
/// <remarks>Safe to call from several threads.</remarks>
public static class RecordReaders
{
    private static readonly Lock Gate = new();
    private static IRecordReader[] s_all = [new Nem12Reader(), new Nem13Reader(), new EspiReader(), new CounterCsvReader(), new DayTableReader(), new IntervalCsvReader()];

    /// <summary>The readers there are, the most particular first.</summary>
    public static IReadOnlyList<IRecordReader> All => s_all;

    /// <summary>Adds a reader, which is asked before those already there. A reader of the same format replaces the old one.</summary>
    /// <param name="reader">The reader.</param>
    public static void Register(IRecordReader reader)
    {
        ArgumentNullException.ThrowIfNull(reader);
        lock (Gate)
            s_all = [reader, .. s_all.Where(r => !string.Equals(r.Format, reader.Format, StringComparison.Ordinal))];
    }

    /// <summary>Reads one file by the first reader that recognises it.</summary>
    /// <param name="path">Path, absolute or from the working folder.</param>
    /// <param name="options">Clock, plant and choices of the user.</param>
    /// <exception cref="RecordException">The file is missing, empty, of no known format, or nothing in it can be read.</exception>
    /// <exception cref="OperationCanceledException">The reading was stopped.</exception>
    public static RecordContent Read(string path, ReadOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        return Read(RecordFile.At(path), options);
    }

    /// <summary>Reads one file that was looked at before, or another form of it, by the first reader that recognises it.</summary>
    /// <param name="file">The file.</param>
    /// <param name="options">Clock, plant and choices of the user.</param>
    /// <exception cref="RecordException">It is of no known format, or nothing in it can be read.</exception>
    /// <exception cref="OperationCanceledException">The reading was stopped.</exception>
    public static RecordContent Read(RecordFile file, ReadOptions options)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(options);
        var reader = s_all.FirstOrDefault(r => r.Recognises(file)) ?? throw Throw.UnknownFormat(file, s_all);
        using var work = WorkProgress.Begin(options.Progress);
        try
        {
            return reader.Read(file, options with { Progress = work });
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw Throw.FileNotReadable(file.Path, e);
        }
    }
}
