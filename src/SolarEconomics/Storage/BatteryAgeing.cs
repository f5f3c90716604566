namespace SolarEconomics;

/// <summary>How a battery's capacity falls: with the calendar and with every full cycle, both of the new capacity, added.</summary>
/// <remarks>Makers state one point (so many cycles or years to 70 %), which is one equation for two unknowns: name which part comes from where. Source: storage-5.</remarks>
public sealed record BatteryAgeing
{
    /// <summary>No ageing: what a straight line takes for granted.</summary>
    public static BatteryAgeing None { get; } = new();

    /// <summary>Share of the new capacity lost each year, working or not. Range: 0 to 0.2. Default: 0.</summary>
    public double CalendarFade { get; init => field = Require.Within(value, 0, 0.2, "a fraction a year; 2 % is written 0.02", nameof(CalendarFade)); }

    /// <summary>Share of the new capacity lost by each full cycle. Range: 0 to 0.01. Default: 0.</summary>
    public double CycleFade { get; init => field = Require.Within(value, 0, 0.01, "a fraction per full cycle; 0.005 % is written 0.00005", nameof(CycleFade)); }

    /// <summary>Share of the new capacity at which it is at its end. Range: 0 to 1. Default: 0.7, as many warranties state.</summary>
    public double EndOfLifeShare { get; init => field = Require.Fraction(value, nameof(EndOfLifeShare)); } = 0.7;

    /// <summary>Years after which it is replaced whatever its capacity. Range: above 0. Default: no such rule.</summary>
    public double MostYears { get; init => field = Require.Within(value, 0.01, double.PositiveInfinity, "years", nameof(MostYears)); } = double.PositiveInfinity;

    /// <summary>Where its fade comes from, in words that go on from "Battery ageing: "; <see langword="null"/> where it was stated in code.</summary>
    public string? Origin { get; init; }

    /// <summary>Share of the new capacity that is left.</summary>
    /// <param name="ageYears">Age. Unit: years. Range: 0 or more.</param>
    /// <param name="fullCycles">Energy that came out of the cells over the new capacity. Range: 0 or more.</param>
    /// <returns>A fraction from 0 to 1.</returns>
    /// <remarks>Equation: 1 − calendar · years − cycle · cycles, not below 0.</remarks>
    public double ShareLeft(double ageYears, double fullCycles) => Math.Max(0, 1 - (CalendarFade * ageYears) - (CycleFade * fullCycles));

    /// <summary>Whether it is at its end.</summary>
    /// <param name="ageYears">Age. Unit: years.</param>
    /// <param name="fullCycles">Full cycles so far.</param>
    public bool IsSpent(double ageYears, double fullCycles) => ageYears >= MostYears || ShareLeft(ageYears, fullCycles) < EndOfLifeShare;
}
