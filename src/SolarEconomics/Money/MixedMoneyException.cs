namespace SolarEconomics;

/// <summary>Two amounts of different currency or price basis were put together.</summary>
public sealed class MixedMoneyException : InvalidOperationException
{
    /// <summary>An exception with a message that names both amounts.</summary>
    /// <param name="message">Found, expected, what to do.</param>
    public MixedMoneyException(string message) : base(message) { }
}
