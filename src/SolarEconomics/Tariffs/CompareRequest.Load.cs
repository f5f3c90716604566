using NodaTime;

namespace SolarEconomics;

/// <content>Asking with a folder and a file.</content>
public sealed partial record CompareRequest
{
    /// <summary>What is asked, from a folder of tariffs and a file of readings.</summary>
    /// <param name="tariffFolder">Folder with tariff files and energy plans (<c>*.json</c>).</param>
    /// <param name="readingsPath">Readings in any format of the registry.</param>
    /// <param name="zone">The home's clock. Default: <see langword="null"/>, which takes that of the first tariff that names a place, then a clock, then the readings' own.</param>
    /// <param name="options">Choices that the readings leave open. Default: none.</param>
    /// <exception cref="RecordException">The folder or a file is missing or cannot be read, or the readings need a clock and none is known.</exception>
    /// <exception cref="TariffException">A tariff contradicts itself.</exception>
    public static CompareRequest Load(string tariffFolder, string readingsPath, DateTimeZone? zone = null, ReadOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(tariffFolder);
        ArgumentNullException.ThrowIfNull(readingsPath);
        var choices = TariffChoice.LoadAll(tariffFolder);
        // A place names the home's clock; a plan's own clock may be another, such as standard time all year.
        var clock = zone ?? choices.Select(c => c.Tariffs.PlaceZone).Concat(choices.Select(c => c.Tariffs.HomeZone)).OfType<DateTimeZone>().FirstOrDefault();
        var readings = Readings.Load(readingsPath, (options ?? new ReadOptions()) with { Zone = clock });
        return new CompareRequest(choices, readings, clock ?? readings.Zone);
    }
}
