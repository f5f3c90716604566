namespace SolarEconomics;

/// <summary>Reads one format of readings. A new format is one such reader, registered, and one test.</summary>
public interface IRecordReader
{
    /// <summary>Name of the format in a few words, as <c>inspect</c> prints it.</summary>
    string Format { get; }

    /// <summary>Whether the file is of this format, judged by its first bytes and its name; never throws on strange bytes.</summary>
    /// <param name="file">The file.</param>
    bool Recognises(RecordFile file);

    /// <summary>Reads the whole file.</summary>
    /// <param name="file">The file.</param>
    /// <param name="options">Clock, plant and choices of the user.</param>
    /// <returns>Channels and counters, with every problem found.</returns>
    /// <exception cref="RecordException">Nothing in it can be read; a damaged row is a problem in the result, not a failure.</exception>
    RecordContent Read(RecordFile file, ReadOptions options);
}
