namespace SolarEconomics;

/// <summary>What kind of number an input is, and so how it is written.</summary>
public enum InputUnit
{
    /// <summary>A fraction a year, written as per cent.</summary>
    SharePerYear,

    /// <summary>A fraction, written as per cent.</summary>
    Share,

    /// <summary>Money in the site's currency.</summary>
    Money,

    /// <summary>Years.</summary>
    Years,

    /// <summary>A bare number.</summary>
    Number,
}
