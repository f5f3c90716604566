using System.Globalization;

namespace SolarEconomics;

/// <summary>An amount of energy. Unit: kilowatt-hours.</summary>
/// <param name="Kwh">Kilowatt-hours; negative where a difference is meant.</param>
/// <remarks>Equation: energy = power × duration. The <c>default</c> is zero. Own struct rather than a quantity library:
/// the domain needs about five quantities, and the reasons are in DEVELOPERS.md.</remarks>
public readonly record struct Energy(double Kwh) : IComparable<Energy>
{
    /// <summary>No energy.</summary>
    public static Energy Zero => default;

    /// <summary>Energy from watt-hours.</summary>
    /// <param name="wh">Watt-hours.</param>
    public static Energy FromWh(double wh) => new(wh / 1000.0);

    /// <summary>Sum of two amounts.</summary>
    public static Energy operator +(Energy a, Energy b) => new(a.Kwh + b.Kwh);

    /// <summary>Difference of two amounts.</summary>
    public static Energy operator -(Energy a, Energy b) => new(a.Kwh - b.Kwh);

    /// <summary>An amount scaled by a bare number.</summary>
    public static Energy operator *(Energy a, double factor) => new(a.Kwh * factor);

    /// <summary>Orders by amount.</summary>
    public int CompareTo(Energy other) => Kwh.CompareTo(other.Kwh);

    /// <summary>Whether the left amount is smaller.</summary>
    public static bool operator <(Energy a, Energy b) => a.Kwh < b.Kwh;

    /// <summary>Whether the left amount is larger.</summary>
    public static bool operator >(Energy a, Energy b) => a.Kwh > b.Kwh;

    /// <summary>Whether the left amount is smaller or equal.</summary>
    public static bool operator <=(Energy a, Energy b) => a.Kwh <= b.Kwh;

    /// <summary>Whether the left amount is larger or equal.</summary>
    public static bool operator >=(Energy a, Energy b) => a.Kwh >= b.Kwh;

    /// <summary>Prints <c>1,234.5 kWh</c> in invariant form.</summary>
    public override string ToString() => Kwh.ToString("#,0.0##", CultureInfo.InvariantCulture) + " kWh";
}
