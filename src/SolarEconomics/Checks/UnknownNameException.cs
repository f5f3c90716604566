namespace SolarEconomics;

/// <summary>A name was given that nothing here bears: a currency, a zone, a device, a field.</summary>
public sealed class UnknownNameException : ArgumentException
{
    /// <summary>An exception with a message that lists the nearest names there are.</summary>
    /// <param name="message">Found, where, expected, what to do.</param>
    public UnknownNameException(string message) : base(message) { }
}
