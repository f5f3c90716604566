using NodaTime;

namespace SolarEconomics;

/// <summary>A place with a plant: where it stands, which clock and which money it uses.</summary>
/// <remarks>Immutable, so safe to share between threads.</remarks>
public sealed record Site
{
    private Site(string name, double latitudeDeg, double longitudeDeg, DateTimeZone zone, Currency currency)
    {
        Name = name;
        LatitudeDeg = latitudeDeg;
        LongitudeDeg = longitudeDeg;
        Zone = zone;
        Currency = currency;
    }

    /// <summary>Name of the site.</summary>
    public string Name { get; }

    /// <summary>Latitude in degrees, north positive.</summary>
    public double LatitudeDeg { get; }

    /// <summary>Longitude in degrees, east positive.</summary>
    public double LongitudeDeg { get; }

    /// <summary>The clock of its records and tariffs.</summary>
    public DateTimeZone Zone { get; }

    /// <summary>Currency of its bills and receipts.</summary>
    public Currency Currency { get; }

    /// <summary>The devices. Default: <see cref="Plant.Unknown"/>.</summary>
    public Plant Plant { get; init; } = Plant.Unknown;

    /// <summary>Share of the use for which the sales tax on electricity is reclaimed, such as a workshop's. Range: 0 to 1. Default: 0.</summary>
    public double TaxReclaimedShare { get; init; }

    /// <summary>A site by its place, clock and money.</summary>
    /// <param name="name">Name of the site.</param>
    /// <param name="latitude">Degrees, north positive. Range: −90 to 90.</param>
    /// <param name="longitude">Degrees, east positive. Range: −180 to 180.</param>
    /// <param name="zone">IANA name of the time zone, for example <c>Europe/Dublin</c>.</param>
    /// <param name="currency">ISO 4217 code, for example <c>EUR</c>.</param>
    /// <exception cref="ArgumentOutOfRangeException">Latitude or longitude is outside its range.</exception>
    /// <exception cref="UnknownNameException">No such zone or currency; the message names the nearest.</exception>
    public static Site At(string name, double latitude, double longitude, string zone, string currency)
    {
        ArgumentNullException.ThrowIfNull(name);
        return new Site(
            name,
            Require.Within(latitude, -90, 90, "degrees, north positive"),
            Require.Within(longitude, -180, 180, "degrees, east positive"),
            Require.Zone(zone),
            SolarEconomics.Currency.Of(currency));
    }
}
