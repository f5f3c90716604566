using System.Globalization;

namespace SolarEconomics.Notebook;

/// <summary>How a session's process ended, judged by what is known of it, and the sentence for the reader.</summary>
internal sealed record ChildEnd(EndReason Reason, string Words)
{
    private const string Fresh = " Its variables are gone; the notebook is whole.";

    internal static ChildEnd Asked(EndReason reason) => new(reason, reason switch
    {
        EndReason.DidNotStop => "The step did not stop by itself, so its session was ended." + Fresh,
        EndReason.OutOfMemory => "The session took more memory than its limit and was ended." + Fresh,
        _ => "The session was closed." + Fresh,
    });

    /// <summary>Judges an end that nobody here asked for.</summary>
    internal static ChildEnd Judge(int exitCode, string errorText)
    {
        if (errorText.Contains("Stack overflow", StringComparison.Ordinal))
            return new(EndReason.StackOverflow, "A method called itself without end (stack overflow), which ended the session." + Fresh);
        if (errorText.Contains("Out of memory", StringComparison.Ordinal) || errorText.Contains("OutOfMemoryException", StringComparison.Ordinal))
            return new(EndReason.OutOfMemory, "The code ran out of memory, which ended the session." + Fresh);
        var code = exitCode.ToString(CultureInfo.InvariantCulture);
        // Above 128 stands the number of a signal; Windows gives faults negative numbers.
        if (exitCode is > 128 or < 0)
            return new(EndReason.Killed, $"The session's process was ended from outside or by a fault (code {code})." + Fresh);
        return new(EndReason.ExitedByCode, $"The code ended its own process (exit code {code})." + Fresh);
    }
}
