using System.Globalization;
using System.Runtime.CompilerServices;
using NodaTime;

namespace SolarEconomics;

/// <summary>Guards: each returns the value or throws with value, range and the usual mistake.</summary>
internal static class Require
{
    internal static double Within(double value, double low, double high, string unit,
        [CallerArgumentExpression(nameof(value))] string name = "") =>
        value >= low && value <= high
            ? value
            : throw new ArgumentOutOfRangeException(name, value, string.Create(CultureInfo.InvariantCulture,
                $"Expected a number from {low} to {high} ({unit})."));

    /// <summary>A thing that must be given, for members of one expression.</summary>
    internal static T Given<T>(T value, [CallerArgumentExpression(nameof(value))] string name = "")
        where T : class => value ?? throw new ArgumentNullException(name);

    internal static double Fraction(double value, [CallerArgumentExpression(nameof(value))] string name = "") =>
        value is >= 0 and <= 1
            ? value
            : throw new ArgumentOutOfRangeException(name, value, "Expected a fraction from 0 to 1; 85 % is written 0.85.");

    internal static double Efficiency(double value, [CallerMemberName] string name = "") =>
        value is > 0 and <= 1
            ? value
            : throw new ArgumentOutOfRangeException(name, value, value switch
            {
                // No part of a plant has an efficiency of a few per cent: 1.2 is a slip, 92 is per cent.
                > 10 and <= 100 => string.Create(CultureInfo.InvariantCulture, $"Expected a fraction above 0 and up to 1: nothing gives more than it takes. If you mean {value} %, write {value / 100}."),
                > 1 => "Expected a fraction above 0 and up to 1: nothing gives more than it takes. 85 % is written 0.85.",
                _ => "Expected a fraction above 0 and up to 1; 85 % is written 0.85.",
            });

    internal static double AtLeastZero(double value, string unit, [CallerMemberName] string name = "") =>
        value >= 0 && double.IsFinite(value)
            ? value
            : throw new ArgumentOutOfRangeException(name, value, $"Expected a number of 0 or more ({unit}).");

    /// <summary>Above this a power is asked back: 5,000 was meant to be W.</summary>
    internal const double MostKw = 1000;

    /// <summary>The most power of something, where infinity says that there is no limit.</summary>
    internal static double LimitKw(double value, [CallerMemberName] string name = "") =>
        value is >= 0 and <= MostKw || double.IsPositiveInfinity(value) ? value : throw Throw.PowerAskedBack(name, value, 0, ", or infinity for no limit");

    internal static double PowerKw(double value, double low = 0, [CallerMemberName] string name = "") =>
        value >= low && value <= MostKw ? value : throw Throw.PowerAskedBack(name, value, low, "");

    /// <summary>Hours that have a length: the <c>default</c> has none.</summary>
    internal static HourSpan Hours(HourSpan value, [CallerMemberName] string name = "") => value.Hours > 0 ? value : throw Throw.HoursOfNoLength(name);

    internal static double Finite(double value, [CallerArgumentExpression(nameof(value))] string name = "") =>
        double.IsFinite(value) ? value : throw new ArgumentOutOfRangeException(name, value, "Expected a finite number.");

    internal static DateTimeZone Zone(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return DateTimeZoneProviders.Tzdb.GetZoneOrNull(id)
            ?? throw new UnknownNameException(
                $"Found time zone \"{id}\", expected an IANA name such as {Nearest.List(id, DateTimeZoneProviders.Tzdb.Ids)}.");
    }
}
