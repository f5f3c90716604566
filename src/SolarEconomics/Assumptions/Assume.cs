using System.Globalization;

namespace SolarEconomics;

/// <summary>Declares the assumptions of a notebook, each with unit and range, so that page and command line can show and set them.</summary>
/// <remarks>Written as one declaration per assumption in any code step, best in one at the top:
/// <c>var discountRate = Assume.Rate("Discount rate", 0.05, from: 0, to: 0.15);</c>.
/// The variable's name is the assumption's name. Page and command line replace the value only.</remarks>
public static class Assume
{
    /// <summary>A rate per year as a fraction: 0.05 is 5 % a year.</summary>
    /// <param name="label">Plain words for people.</param>
    /// <param name="value">The rate. Range: <paramref name="from"/> to <paramref name="to"/>.</param>
    /// <param name="from">Lowest value that makes sense.</param>
    /// <param name="to">Highest value that makes sense.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public static double Rate(string label, double value, double from, double to) =>
        Checked(label, value, from, to, "a fraction a year; 5 % is written 0.05");

    /// <summary>A share as a fraction: 0.35 is 35 %.</summary>
    /// <param name="label">Plain words for people.</param>
    /// <param name="value">The share. Range: <paramref name="from"/> to <paramref name="to"/>.</param>
    /// <param name="from">Lowest value that makes sense.</param>
    /// <param name="to">Highest value that makes sense.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public static double Share(string label, double value, double from, double to) =>
        Checked(label, value, from, to, "a fraction; 35 % is written 0.35");

    /// <summary>A whole number of years.</summary>
    /// <param name="label">Plain words for people.</param>
    /// <param name="value">The number of years. Range: <paramref name="from"/> to <paramref name="to"/>.</param>
    /// <param name="from">Lowest value that makes sense.</param>
    /// <param name="to">Highest value that makes sense.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public static int Years(string label, int value, int from, int to) =>
        (int)Checked(label, value, from, to, "whole years");

    /// <summary>A number in a named unit.</summary>
    /// <param name="label">Plain words for people.</param>
    /// <param name="value">The number. Range: <paramref name="from"/> to <paramref name="to"/>.</param>
    /// <param name="unit">Unit, for example <c>EUR</c>, <c>EUR/kWh</c> or <c>kWp</c>.</param>
    /// <param name="from">Lowest value that makes sense.</param>
    /// <param name="to">Highest value that makes sense.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public static double Number(string label, double value, string unit, double from, double to) =>
        Checked(label, value, from, to, unit);

    private static double Checked(string label, double value, double from, double to, string unit) =>
        value >= from && value <= to
            ? value
            : throw new ArgumentOutOfRangeException(label, value, string.Create(CultureInfo.InvariantCulture,
                $"{label}: found {value}, expected a number from {from} to {to} ({unit})."));
}
