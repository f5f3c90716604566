using NodaTime;

namespace SolarEconomics;

/// <summary>A change: these modules out, those in, at one device.</summary>
/// <param name="Device">Name of the device in the plant whose modules are replaced.</param>
/// <param name="NewKwp">Rating of the new modules. Unit: kWp. Above 0.</param>
/// <param name="Cost">Bought and fitted. Unit: the site's currency. 0 or more.</param>
/// <param name="On">Day of the change, not before the end of the records.</param>
public sealed record PanelSwap(string Device, double NewKwp, decimal Cost, LocalDate On)
{
    /// <summary>What becomes of the old modules. Default: kept as spares.</summary>
    public Displaced Displaced { get; init; } = Displaced.Kept;

    /// <summary>The most that the inverter gives. Unit: kW of AC. Default: <see langword="null"/>, no limit stated; clipping is then left out.</summary>
    public double? InverterKw { get; init; }
}
