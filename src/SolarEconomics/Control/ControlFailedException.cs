namespace SolarEconomics;

/// <summary>A control that was written as one expression threw instead of deciding; <see cref="Exception.InnerException"/> is what it threw.</summary>
public sealed class ControlFailedException : Exception
{
    /// <summary>An exception that names control and interval.</summary>
    /// <param name="message">Found, where, expected, what to do.</param>
    /// <param name="interval">Number of the interval, from 0.</param>
    /// <param name="fault">What the control threw.</param>
    public ControlFailedException(string message, int interval, Exception fault) : base(message, fault) => Interval = interval;

    /// <summary>Number of the interval, from 0.</summary>
    public int Interval { get; }
}
