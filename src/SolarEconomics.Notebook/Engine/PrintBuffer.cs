using System.Globalization;
using System.Text;

namespace SolarEconomics.Notebook;

/// <summary>Gathers what a step prints and hands it on in pieces, so that a flood of prints stays a trickle of outputs.</summary>
internal sealed class PrintBuffer : IDisposable
{
    /// <summary>Characters that one run of a step may print; the rest is counted and left out.</summary>
    internal const int Most = 5_000_000;

    private const int PieceLength = 64 * 1024;
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(50);

    private readonly Lock gate = new();
    private readonly StringBuilder text = new();
    private readonly Action<string, string> handOn;
    private readonly Timer timer;
    private string stream = "stdout";
    private long handedOnAt = -(long)Pause.TotalMilliseconds;
    private long printed;
    private long leftOut;

    internal PrintBuffer(Action<string, string> handOn)
    {
        this.handOn = handOn;
        timer = new Timer(_ => Flush());
    }

    internal void Add(string toStream, ReadOnlySpan<char> piece)
    {
        lock (gate)
        {
            if (!string.Equals(stream, toStream, StringComparison.Ordinal)) FlushHeld();
            stream = toStream;
            var room = (int)Math.Min(piece.Length, Math.Max(0, Most - printed));
            leftOut += piece.Length - room;
            printed += room;
            if (room == 0) return;
            if (text.Length == 0) timer.Change(Pause, Timeout.InfiniteTimeSpan);
            text.Append(piece[..room]);
            // A line after a silence goes at once, on the thread that prints it: a loop right behind it may keep every other thread from running.
            if (text.Length >= PieceLength || (text[^1] == '\n' && IsQuiet)) FlushHeld();
        }
    }

    private bool IsQuiet => Environment.TickCount64 - handedOnAt >= (long)Pause.TotalMilliseconds;

    internal void Flush()
    {
        lock (gate) FlushHeld();
    }

    /// <summary>Hands the rest on, says how much was left out, and starts counting afresh.</summary>
    internal void EndStep()
    {
        lock (gate)
        {
            FlushHeld();
            if (leftOut > 0)
                handOn("stderr", string.Create(CultureInfo.InvariantCulture, $"{leftOut:N0} more characters were printed and left out; a step keeps the first {Most:N0}.\n"));
            (printed, leftOut) = (0, 0);
        }
    }

    public void Dispose() => timer.Dispose();

    private void FlushHeld()
    {
        if (text.Length == 0) return;
        handOn(stream, text.ToString());
        text.Clear();
        handedOnAt = Environment.TickCount64;
    }
}
