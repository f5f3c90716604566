namespace SolarEconomics;

/// <summary>A real rate met nominal money, or a nominal rate real money.</summary>
public sealed class BasisMismatchException : InvalidOperationException
{
    /// <summary>An exception with a message that names both.</summary>
    /// <param name="message">Found, expected, what to do.</param>
    public BasisMismatchException(string message) : base(message) { }
}
