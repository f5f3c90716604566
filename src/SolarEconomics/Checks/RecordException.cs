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

    /// <summary>The collected problems, in file order; empty where there is only the message.</summary>
    public IReadOnlyList<Problem> Problems { get; }
}
