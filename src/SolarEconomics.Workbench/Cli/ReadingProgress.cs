using System.Diagnostics;
using System.Globalization;

namespace SolarEconomics.Workbench;

/// <summary>Says how much of a long file is read: nothing in the first second, then a line that overwrites itself, or one now and then where nobody watches.</summary>
internal sealed class ReadingProgress(Io io) : IProgress<double>
{
    private static readonly TimeSpan Quiet = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Watched = TimeSpan.FromSeconds(0.2);
    private static readonly TimeSpan Unwatched = TimeSpan.FromSeconds(5);

    private readonly Stopwatch _time = Stopwatch.StartNew();
    private TimeSpan _next = Quiet;
    private bool _shown;

    public void Report(double value)
    {
        if (_time.Elapsed < _next) return;
        _next = _time.Elapsed + (io.IsTerminal ? Watched : Unwatched);
        _shown = true;
        io.Error.Write(string.Create(CultureInfo.InvariantCulture, $"{(io.IsTerminal ? "\r" : "")}Reading: {Math.Clamp(value, 0, 1) * 100:0} % of the file. Ctrl+C stops it.{(io.IsTerminal ? "" : "\n")}"));
        io.Error.Flush();
    }

    /// <summary>Clears the line for the answer.</summary>
    internal void Done()
    {
        if (_shown && io.IsTerminal) io.Error.Write("\r" + new string(' ', 50) + "\r");
    }
}
