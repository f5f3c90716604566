using NodaTime;

namespace SolarEconomics;

/// <content>The same history under another assumption.</content>
public sealed partial class TariffHistory
{
    /// <summary>The first day of a version that is meant to hold for all time.</summary>
    internal static readonly LocalDate AllTime = new(1800, 1, 1);

    /// <summary>The latest version in force for all time.</summary>
    public TariffHistory OnlyLatest() => Of(Latest with { From = AllTime });

    /// <summary>The latest version for all time, with one price for every kWh imported at any hour; fixed parts and export stay.</summary>
    /// <param name="perKwhWithTax">Price of import with the tariff's tax, per kWh.</param>
    public TariffHistory WithOnePrice(decimal perKwhWithTax)
    {
        var one = new EnergyPart("import", EnergySide.Import, [EnergyRate.Flat("one price", perKwhWithTax / (1 + Latest.Tax))]);
        var others = Latest.Parts.Where(p => p is not EnergyPart { Side: EnergySide.Import });
        return Of(Latest with { From = AllTime, Parts = [.. others, one] });
    }

    /// <summary>Every version with its prices scaled, for a price path beyond the last version.</summary>
    /// <param name="importFactor">Factor on import prices.</param>
    /// <param name="exportFactor">Factor on prices paid for export.</param>
    /// <param name="supplyFactor">Factor on supply charges.</param>
    public TariffHistory Scaled(decimal importFactor, decimal exportFactor, decimal supplyFactor) =>
        Of([.. Versions.Select(v => v.Scaled(importFactor, exportFactor, supplyFactor))]);
}
