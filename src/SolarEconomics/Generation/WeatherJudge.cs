namespace SolarEconomics;

/// <summary>Whether weather that was read can be true at its place: its light beside the sun, and its parts beside their sum.</summary>
internal static class WeatherJudge
{
    private const double LeastUp = 0.15;
    private const double LeastWm2 = 50;
    private const double MostApart = 0.15;
    private const double MostHours = 0.1;

    internal static IEnumerable<Problem> Judge(Weather weather, Site site, string file)
    {
        if (weather.ClockOffsetMinutes(site) is { } late && Math.Abs(late) > Math.Max(12, 0.4 * weather.Grid.Step.TotalMinutes))
        {
            yield return new Problem(file, 0, 0, "", FormattableString.Invariant($"light that lies {Math.Abs(late):0} minutes {(late > 0 ? "behind" : "ahead of")} the sun of the place"),
                "it within a few minutes: a step off means that stamps name the other edge (pass the edge), half a step that values are of a moment, whole hours that summer time or another zone is mixed up", Severity.Doubtful);
        }
        if (weather.IsSplit && Apart(weather, site) is { Steps: > 0 } apart && apart.Steps > MostHours * apart.Bright)
        {
            yield return new Problem(file, 0, 0, "", FormattableString.Invariant($"global that beam and diffuse do not make up within 15 % in {apart.Steps:#,0} of {apart.Bright:#,0} bright steps"),
                "beam times the sine of the sun's height, plus diffuse, to be global: is beam on level ground instead of square to the sun, are two columns swapped, or is the clock off?", Severity.Doubtful);
        }
    }

    /// <summary>Bright steps, and those of them in which the parts do not make up the whole.</summary>
    private static (int Steps, int Bright) Apart(Weather weather, Site site)
    {
        var (steps, bright) = (0, 0);
        for (var i = 0; i < weather.Grid.Count; i++)
        {
            if (weather.GlobalWm2[i] < LeastWm2) continue;
            var up = SolarCoordinates.At(weather.Grid.StartOf(i) + (weather.Grid.Step / 2)).DirectionFrom(site.LatitudeDeg, site.LongitudeDeg).Up;
            if (up < LeastUp) continue;
            bright++;
            if (Math.Abs((weather.BeamNormalWm2[i] * up) + weather.DiffuseWm2[i] - weather.GlobalWm2[i]) > MostApart * weather.GlobalWm2[i]) steps++;
        }
        return (steps, bright);
    }
}
