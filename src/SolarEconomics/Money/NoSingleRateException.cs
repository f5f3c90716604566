namespace SolarEconomics;

/// <summary>A flow has no rate of return, or several.</summary>
public sealed class NoSingleRateException : InvalidOperationException
{
    /// <summary>An exception with a message in numbers and the search's result.</summary>
    /// <param name="message">Found, expected, what to do.</param>
    /// <param name="result">How the search ended, with every rate found.</param>
    public NoSingleRateException(string message, IrrResult result) : base(message) => Result = result;

    /// <summary>How the search ended, with every rate found.</summary>
    public IrrResult Result { get; }
}
