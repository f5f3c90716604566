namespace SolarEconomics;

/// <summary>What a home needs to be given a tariff.</summary>
[Flags]
public enum TariffNeeds
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>A solar plant.</summary>
    Solar = 1,

    /// <summary>A battery.</summary>
    Battery = 2,

    /// <summary>A meter that counts intervals.</summary>
    SmartMeter = 4,

    /// <summary>An electric car.</summary>
    ElectricCar = 8,

    /// <summary>A heat pump.</summary>
    HeatPump = 16,

    /// <summary>A right to social support.</summary>
    SocialSupport = 32,
}
