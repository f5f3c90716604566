using NodaTime;
using NodaTime.Text;

namespace SolarEconomics.Tests.SunRoom;

/// <summary>The outside rows on sun position and time (tests/data/published/rows-sun.csv).</summary>
public sealed class SunRowsTests
{
    [Theory, PublishedRows("daily-radiation")]
    public void Daily_radiation_agrees_with_the_published_examples(string id) => Published.Check(id, row =>
    {
        var (latitude, day) = (row.Number("latitude"), row.Whole("day"));
        return row.Text("give") switch
        {
            "inverse distance squared" => DailyRadiation.InverseDistanceSquared(day),
            "declination rad" => DailyRadiation.DeclinationRad(day),
            "sunset rad" => DailyRadiation.SunsetHourAngleRad(latitude, day),
            "above atmosphere" => DailyRadiation.AboveAtmosphereMjM2(latitude, day),
            "evaporation mm" => DailyRadiation.AsEvaporationMm(DailyRadiation.AboveAtmosphereMjM2(latitude, day)),
            "daylight hours" => DailyRadiation.DaylightHours(latitude, day),
            "from sunshine" => DailyRadiation.FromSunshineMjM2(latitude, day, row.Number("sunshine"), row.Number("a"), row.Number("b")),
            var other => throw new FormatException(other),
        };
    });

    [Theory, PublishedRows("solar-time")]
    public void Solar_time_agrees_with_the_published_examples(string id) => Published.Check(id, row => row.Text("give") switch
    {
        "equation of time" => SolarTime.EquationOfTimeMinutes(row.Whole("day")),
        "day angle" => SolarTime.DayAngleRad(row.Whole("day")),
        "hour angle" => SolarTime.HourAngleDeg(row.Number("clock")),
        "solar minutes" => 60 * SolarTime.SolarHours(row.Number("clock"), row.Number("longitude"), row.Number("meridian"), row.Whole("day")),
        var other => throw new FormatException(other),
    });

    [Theory, PublishedRows("textbook-sun")]
    public void Textbook_angles_agree_with_the_published_examples(string id) => Published.Check(id, row =>
    {
        var sun = SunDirection.OfHourAngle(row.Number("latitude"), row.Number("declination"), row.Number("hour angle"));
        var plane = row.Has("tilt") ? new Plane(row.Number("tilt"), 180 + row.Number("west of south")) : Plane.Level;
        return row.Text("give") switch
        {
            "cos incidence" => sun.CosIncidence(plane),
            "incidence" => sun.IncidenceDeg(plane),
            "beam ratio" => sun.BeamRatio(plane)!.Value,
            "zenith" => sun.ZenithDeg,
            "altitude" => 90 - sun.ZenithDeg,
            "azimuth west of south" => sun.AzimuthDeg - 180,
            "sunset hour angle" => SolarTime.SunsetHourAngleDeg(row.Number("latitude"), row.Number("declination")),
            var other => throw new FormatException(other),
        };
    });

    [Theory, PublishedRows("sun-position")]
    public void The_position_agrees_with_the_high_precision_reference(string id) => Published.Check(id, row =>
    {
        var instant = InstantPattern.General.Parse(row.Text("utc")).Value;
        var sun = Sun.At(instant, row.Number("latitude"), row.Number("longitude"), new Air(row.Number("mbar"), row.Number("air")));
        return row.Text("give") switch
        {
            "zenith" => sun.ZenithDeg,
            "azimuth" => sun.AzimuthDeg,
            "incidence" => sun.IncidenceDeg(new Plane(row.Number("tilt"), row.Number("facing"))),
            "julian day" => sun.JulianDay,
            "declination" => sun.DeclinationDeg,
            "right ascension" => sun.RightAscensionDeg,
            "equation of time" => sun.EquationOfTimeMinutes,
            "hour angle" => sun.HourAngleDeg,
            "refraction" => sun.RefractionDeg,
            var other => throw new FormatException(other),
        };
    });

    [Theory, PublishedRows("rise-and-set")]
    public void Rise_and_set_agree_with_the_tables(string id) => Published.Check(id, row =>
    {
        var day = Sun.On(row.Dates("date")[0], row.Number("latitude"), row.Number("longitude"));
        return MinutesSince(row, row.Text("event") == "rise" ? day.Rise!.Value : day.Set!.Value);
    });

    [Theory, PublishedRows("season")]
    public void Seasons_begin_when_the_almanac_says(string id) => Published.Check(id, row =>
        MinutesSince(row, Sun.SeasonStart(row.Dates("minutes since")[0].Year, Enum.Parse<Season>(row.Text("season")))));

    private static double MinutesSince(PublishedRow row, Instant instant) =>
        (instant - row.Dates("minutes since")[0].AtMidnight().InUtc().ToInstant()).TotalMinutes;
}
