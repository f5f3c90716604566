namespace SolarEconomics;

/// <summary>What each kWh displaced and so was worth, and what a kWh from storage cost.</summary>
/// <remarks>An attribution of a difference of bills, priced by the hour. Fixed charges, blocks and demand belong to no single kWh and are left to the bills.</remarks>
public sealed partial class FlowWorth
{
    /// <summary>Each flow that is worth or costs something.</summary>
    public required IReadOnlyList<DestinationWorth> Destinations { get; init; }

    /// <summary>Worth of all that the battery gave.</summary>
    public required Money FromStorage { get; init; }

    /// <summary>What charging cost: feed-in forgone where it could have been exported, import and fuel paid. Wear left out.</summary>
    public required Money Charging { get; init; }

    /// <summary>Wear of the battery: its throughput at the wear per kWh that was stated.</summary>
    public required Money Wear { get; init; }

    /// <summary>What the standby of battery and converter cost.</summary>
    public required Money Standby { get; init; }

    /// <summary>What the battery gave to use and export. Unit: kWh at the board.</summary>
    public required double FromStorageKwh { get; init; }

    /// <summary>Against the same plant without a battery: worth of what it gave − charging − standby − wear.</summary>
    public Money StorageGain => FromStorage - Charging - Standby - Wear;

    /// <summary>What one kWh from storage cost at the board: charging, so losses too, standby and wear. Units of the currency; 0 where it gave nothing.</summary>
    public double StorageCostPerKwh => FromStorageKwh > 0 ? (double)(Charging + Standby + Wear).Amount / FromStorageKwh : 0;
}
