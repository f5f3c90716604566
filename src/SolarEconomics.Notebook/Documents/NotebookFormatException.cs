namespace SolarEconomics.Notebook;

/// <summary>A file is not a notebook that can be opened; nothing was changed in it.</summary>
public sealed class NotebookFormatException : Exception
{
    /// <summary>An exception with a message for the reader.</summary>
    /// <param name="message">Found, where, expected, what to do.</param>
    public NotebookFormatException(string message) : base(message) { }

    /// <summary>An exception with a message for the reader and what led to it.</summary>
    /// <param name="message">Found, where, expected, what to do.</param>
    /// <param name="inner">What the JSON reader said.</param>
    public NotebookFormatException(string message, Exception inner) : base(message, inner) { }
}
