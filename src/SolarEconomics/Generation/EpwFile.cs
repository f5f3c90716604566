namespace SolarEconomics;

/// <summary>A year of weather in the open EPW form, with its place.</summary>
/// <param name="Place">Name of the place, as the file has it.</param>
/// <param name="LatitudeDeg">Degrees, north positive.</param>
/// <param name="LongitudeDeg">Degrees, east positive.</param>
/// <param name="UtcOffsetHours">Clock of the file: standard time all year. Unit: hours ahead of UTC.</param>
/// <param name="HeightM">Height above the sea. Unit: m.</param>
/// <param name="Weather">The weather, hour by hour.</param>
/// <param name="Problems">What was found on the way, in file order.</param>
public sealed partial record EpwFile(
    string Place, double LatitudeDeg, double LongitudeDeg, double UtcOffsetHours, double HeightM, Weather Weather, IReadOnlyList<Problem> Problems)
{
    /// <summary>Reads a file.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="year">Calendar year that its hours are laid on: such a file is put together from months of several years. Default: 2023, or 2024 where the file has a 29 February.</param>
    /// <remarks>An hour 1 is 00:00 to 01:00. Air or wind marked as missing is held from the hour before and listed; radiation marked as missing is not made up:
    /// the file is refused. Source: gen-10.</remarks>
    /// <exception cref="RecordException">The file is missing, is not in this form, or lacks radiation; the message names line and field.</exception>
    public static EpwFile Load(string path, int? year = null)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (!File.Exists(path)) throw Throw.NoWeatherFile(path);
        return new EpwReader(Path.GetFileName(path)).Read(File.ReadAllLines(path), year);
    }
}
