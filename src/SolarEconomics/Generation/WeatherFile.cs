namespace SolarEconomics;

/// <summary>Weather from a table of the user's: a logger's export, a weather service's download.</summary>
/// <param name="Weather">The weather, step by step.</param>
/// <param name="Problems">What was found on the way, in file order.</param>
public sealed record WeatherFile(Weather Weather, IReadOnlyList<Problem> Problems)
{
    /// <summary>Reads a CSV file whose heading names each column with its unit.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="site">The site: its clock for stamps without an offset, its sun to judge the stamps by.</param>
    /// <param name="edge">Which edge of its step a stamp names. Default: as the heading says ("time end"), otherwise the start.</param>
    /// <remarks>Columns: <c>time</c>, <c>global (W/m²)</c>, <c>air (°C)</c>; where known <c>beam (W/m²)</c> and <c>diffuse (W/m²)</c> together, and <c>wind (m/s)</c> or <c>wind (km/h)</c>;
    /// without wind 2 m/s are taken and that is listed. Comma, semicolon or tab; with the last two also decimal commas. Lines that start with # are comments.
    /// Missing air or wind is held from the step before and listed; missing radiation or a missing step refuses the file, as neither is made up.</remarks>
    /// <exception cref="RecordException">The file is missing, has no such columns, or has gaps or values that no weather has; every one is listed with line and field.</exception>
    public static WeatherFile Load(string path, Site site, StampEdge edge = StampEdge.FromRecord)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(site);
        if (!File.Exists(path)) throw Throw.NoWeatherTable(path);
        return new WeatherTable(Path.GetFileName(path), site).Read(File.ReadAllLines(path), edge);
    }
}
