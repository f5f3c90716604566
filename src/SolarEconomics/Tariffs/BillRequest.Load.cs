using NodaTime;

namespace SolarEconomics;

/// <content>Asking with two files.</content>
public sealed partial record BillRequest
{
    /// <summary>What is asked, from a tariff file and a file of readings.</summary>
    /// <param name="tariffPath">A tariff file of ours or a regulator's energy plan.</param>
    /// <param name="readingsPath">Readings in any format of the registry.</param>
    /// <param name="zone">The home's clock. Default: <see langword="null"/>, which takes that of the place the plan names, then the tariff's, then the readings' own.</param>
    /// <param name="options">Choices that the readings leave open. Default: none.</param>
    /// <exception cref="RecordException">A file is missing or cannot be read, or the readings need a clock and none is known.</exception>
    /// <exception cref="TariffException">The tariff contradicts itself.</exception>
    public static BillRequest Load(string tariffPath, string readingsPath, DateTimeZone? zone = null, ReadOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(tariffPath);
        ArgumentNullException.ThrowIfNull(readingsPath);
        var tariffs = TariffHistory.Load(tariffPath);
        var clock = zone ?? tariffs.HomeZone;
        var readings = Readings.Load(readingsPath, (options ?? new ReadOptions()) with { Zone = clock });
        return new BillRequest(tariffs, readings, clock ?? readings.Zone);
    }
}
