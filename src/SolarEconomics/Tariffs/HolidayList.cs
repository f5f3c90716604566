using NodaTime;

namespace SolarEconomics;

/// <summary>The public holidays that a tariff recognises.</summary>
/// <param name="Days">The dated days.</param>
/// <remarks>Immutable, so safe to share between threads.</remarks>
public sealed record HolidayList(IReadOnlySet<LocalDate> Days)
{
    /// <summary>First year for which holidays of a country are worked out.</summary>
    public const int FirstYear = 2000;

    /// <summary>Last year for which holidays of a country are worked out.</summary>
    public const int LastYear = 2060;

    /// <summary>No holidays: every day is judged by its weekday.</summary>
    public static HolidayList None { get; } = new(new HashSet<LocalDate>());

    /// <summary>Holidays from own dates.</summary>
    /// <param name="days">The dated days, in any order.</param>
    public static HolidayList Of(params IEnumerable<LocalDate> days) => new(new HashSet<LocalDate>(Require.Given(days)));

    /// <summary>The public holidays of a country, from <see cref="FirstYear"/> to <see cref="LastYear"/>, as the rules of today give them.</summary>
    /// <param name="country">ISO 3166 code, for example <c>IE</c>.</param>
    /// <param name="region">State, province or canton as the country writes it, for example <c>VIC</c>. Default: <see langword="null"/>, what holds in the whole country.</param>
    /// <exception cref="UnknownNameException">No such country or region; the message names the nearest.</exception>
    /// <remarks>A holiday that a government sets for one year only is not among them: add it by <see cref="With"/>. Source: bill-holidays.</remarks>
    public static HolidayList OfCountry(string country, string? region = null)
    {
        ArgumentNullException.ThrowIfNull(country);
        var calendar = HolidayCountries.Of(country, region);
        return Of(Enumerable.Range(FirstYear, LastYear - FirstYear + 1).SelectMany(year => HolidayCountries.In(year, calendar)).Select(LocalDate.FromDateTime));
    }

    /// <summary>These days and others.</summary>
    /// <param name="days">Further days.</param>
    public HolidayList With(params IEnumerable<LocalDate> days) => Of(Days.Concat(days));

    /// <summary>Whether there is any holiday at all.</summary>
    public bool Any => Days.Count > 0;

    /// <summary>Whether a day is a holiday.</summary>
    /// <param name="day">Any calendar day.</param>
    public bool Contains(LocalDate day) => Days.Contains(day);
}
