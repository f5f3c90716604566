namespace SolarEconomics;

/// <summary>A control ordered what cannot be done in that interval.</summary>
public sealed class ImpossibleOrderException : Exception
{
    /// <summary>An exception that names the order.</summary>
    /// <param name="message">Found, where, expected, what to do.</param>
    /// <param name="field">Which part of the <see cref="Order"/>.</param>
    /// <param name="interval">Number of the interval, from 0.</param>
    public ImpossibleOrderException(string message, string field, int interval) : base(message) => (Field, Interval) = (field, interval);

    /// <summary>Which part of the <see cref="Order"/>.</summary>
    public string Field { get; }

    /// <summary>Number of the interval, from 0.</summary>
    public int Interval { get; }
}
