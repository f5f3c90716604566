using System.Globalization;

namespace SolarEconomics;

/// <summary>A result that can say itself in words, numbers and tables.</summary>
public interface IFinding
{
    /// <summary>Says the result for a reader.</summary>
    /// <param name="culture">How numbers and dates are written; the words are English.</param>
    Finding Say(CultureInfo culture);
}
