namespace SolarEconomics.Tests.SunRoom;

/// <summary>The outside rows on light from sun and sky (tests/data/published/rows-sun.csv).</summary>
public sealed class SkyRowsTests
{
    private const double Rad = Math.PI / 180;

    [Theory, PublishedRows("sky-on-plane")]
    public void Light_on_a_plane_agrees_with_the_published_cases(string id) => Published.Check(id, row =>
    {
        var plane = new Plane(row.Number("tilt"), row.Number("facing"));
        var sun = SunDirection.Of(row.Number("zenith"), row.Has("azimuth") ? row.Number("azimuth") : AzimuthByIncidence(row));
        var sky = new Sky(sun, Irradiance.FromBeam(row.Number("beam"), row.Number("diffuse"), sun), row.Number("extraterrestrial"))
        {
            AirMass = row.Has("air mass") ? row.Number("air mass") : null,
        };
        var on = sky.On(plane, Enum.Parse<SkyModel>(row.Text("model")), row.Number("ground"));
        return row.Text("give") switch
        {
            "horizontal" => sky.Irradiance.GlobalWm2,
            "total" => on.TotalWm2,
            "beam" => on.BeamWm2,
            "ground" => on.GroundWm2,
            "sky" => on.SkyWm2,
            "clearness" => PerezSky.Of(sky).Clearness,
            "brightness" => PerezSky.Of(sky).Brightness,
            "F1" => PerezSky.Of(sky).Brightening.AroundSun,
            "F2" => PerezSky.Of(sky).Brightening.Horizon,
            var other => throw new FormatException(other),
        };
    });

    [Theory, PublishedRows("diffuse-share")]
    public void The_diffuse_share_agrees_with_the_published_formula(string id) =>
        Published.Check(id, row => Decomposition.DiffuseShare(row.Number("clearness")));

    [Theory, PublishedRows("clear-day")]
    public void A_clear_day_agrees_with_the_published_example(string id) => Published.Check(id, row =>
    {
        var day = row.Whole("day");
        var declination = 23.45 * Math.Sin(2 * Math.PI * (day - 81) / 365.0); // the row's own declination
        var sun = SunDirection.OfHourAngle(row.Number("latitude"), declination, 0);
        var constants = ClearSky.DayOfYearConstants(day);
        var clear = ClearSky.ByDayOfYear(sun, day);
        var plane = new Plane(row.Number("tilt"), row.Number("facing"));
        var on = new Sky(sun, clear, AboveAtmosphere.SolarConstantWm2).On(plane, SkyModel.Isotropic, row.Number("ground"));
        return row.Text("give") switch
        {
            "altitude" => 90 - sun.ZenithDeg,
            "apparent" => constants.ApparentWm2,
            "optical depth" => constants.OpticalDepth,
            "diffuse share" => constants.DiffuseShare,
            "beam normal" => clear.BeamNormalWm2,
            "cos incidence" => sun.CosIncidence(plane),
            "beam" => on.BeamWm2,
            "sky" => on.SkyWm2,
            "ground" => on.GroundWm2,
            "total" => on.TotalWm2,
            var other => throw new FormatException(other),
        };
    });

    /// <summary>Where a row gives zenith, incidence and tilt, the azimuth between sun and plane follows from them.</summary>
    private static double AzimuthByIncidence(PublishedRow row)
    {
        var (zenith, tilt) = (row.Number("zenith") * Rad, row.Number("tilt") * Rad);
        var cosBetween = (Math.Cos(row.Number("incidence") * Rad) - (Math.Cos(zenith) * Math.Cos(tilt))) / (Math.Sin(zenith) * Math.Sin(tilt));
        return row.Number("facing") + (Math.Acos(cosBetween) / Rad);
    }
}
