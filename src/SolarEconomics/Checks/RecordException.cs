namespace SolarEconomics;

/// <summary>A record could not be read at all: missing, empty, or nothing in it that can be used.</summary>
public sealed class RecordException : Exception
{
    /// <summary>An exception with one message.</summary>
    /// <param name="message">Found, where, expected, what to do.</param>
    public RecordException(string message) : this(message, []) { }

    /// <summary>An exception with one message and the problems collected on the way.</summary>
    /// <param name="message">Found, where, expected, what to do.</param>
    /// <param name="problems">The collected problems, in file order.</param>
    public RecordException(string message, IReadOnlyList<Problem> problems) : base(message) => Problems = problems;

    /// <summary>An exception whose message is one finding with its place.</summary>
    /// <param name="reason">What was found, where, and what was expected.</param>
    /// <param name="problems">What was collected on the way, in file order. Default: nothing.</param>
    public RecordException(Problem reason, IReadOnlyList<Problem>? problems = null) : this(SentenceOf(reason), problems ?? []) => Reason = reason;

    /// <summary>The collected problems, in file order; empty where there is only the message.</summary>
    public IReadOnlyList<Problem> Problems { get; }

    /// <summary>The message in its parts: file, line, column, raw text, found and expected; <see langword="null"/> where the message names no place in a file.</summary>
    public Problem? Reason { get; }

    private static string SentenceOf(Problem reason)
    {
        ArgumentNullException.ThrowIfNull(reason);
        return reason.Sentence;
    }
}
