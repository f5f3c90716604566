using System.Globalization;

namespace SolarEconomics.Workbench;

/// <summary>The file named by <c>--log</c>: times, events and failures; never readings, never the page's address.</summary>
internal sealed class LocalLog : IDisposable
{
    private static LocalLog current = new(null);
    private readonly TextWriter? file;
    private readonly Lock gate = new();

    private LocalLog(TextWriter? file) => this.file = file;

    /// <summary>The log of this run; writing to it without <c>--log</c> does nothing.</summary>
    public static LocalLog Current => current;

    public static LocalLog Open(FileInfo? path, Io io)
    {
        if (path is null) return current;
        current = new LocalLog(TextWriter.Synchronized(new StreamWriter(Path.Combine(io.Folder, path.ToString()), append: true) { AutoFlush = true }));
        current.Write($"started, version {typeof(LocalLog).Assembly.GetName().Version}, {Environment.OSVersion}, .NET {Environment.Version}");
        return current;
    }

    public void Write(string happened)
    {
        if (file is null) return;
        lock (gate) file.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{DateTimeOffset.UtcNow:O} {happened}"));
    }

    /// <summary>Kind and place of a failure; its message may hold a value from a record and is left out.</summary>
    public void Write(Exception failure) => Write($"{failure.GetType().FullName}{Environment.NewLine}{failure.StackTrace}");

    public void Dispose() => file?.Dispose();
}
