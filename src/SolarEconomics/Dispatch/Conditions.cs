namespace SolarEconomics;

/// <summary>All that changes with time and that nobody in the plant decides: wanted use, sun, prices, limits, outages.</summary>
/// <param name="Load">The wanted use, on the time line of everything else.</param>
/// <remarks>Series have one value per interval of <see cref="Time"/>; an empty one says that there is nothing of it.</remarks>
public sealed record Conditions(LoadSeries Load)
{
    /// <summary>The wanted use.</summary>
    public LoadSeries Load { get; init => field = value ?? throw new ArgumentNullException(nameof(Load)); } = Load ?? throw new ArgumentNullException(nameof(Load));

    /// <summary>The intervals.</summary>
    public Timeline Time => Load.Time;

    /// <summary>What the arrays could make. Default: none.</summary>
    public IReadOnlyList<ArraySupply> Arrays { get; init => field = value ?? throw new ArgumentNullException(nameof(Arrays)); } = [];

    /// <summary>Price of import with tax. Unit: currency per kWh. Default: empty, not known.</summary>
    public ReadOnlyMemory<double> ImportPricePerKwh { get; init; }

    /// <summary>Paid for export. Unit: currency per kWh, negative where export costs. Default: empty, not known.</summary>
    public ReadOnlyMemory<double> ExportPricePerKwh { get; init; }

    /// <summary>The most that may be sent at each time, besides <see cref="GridConnection.MostExportKw"/>. Unit: kW. Default: empty, no further limit.</summary>
    public ReadOnlyMemory<double> MostExportKw { get; init; }

    /// <summary>Whether the grid is out. Default: empty, never.</summary>
    public ReadOnlyMemory<bool> GridIsOut { get; init; }

    /// <summary>Temperature of the battery's cells. Unit: °C. Default: empty, not known, so no limit of temperature acts.</summary>
    public ReadOnlyMemory<double> BatteryC { get; init; }

    /// <summary>Loads that may wait. Default: none.</summary>
    public IReadOnlyList<DeferrableLoad> Deferrable { get; init => field = value ?? throw new ArgumentNullException(nameof(Deferrable)); } = [];

    /// <summary>The same with the prices of a tariff.</summary>
    /// <param name="plan">The tariff laid on the same intervals.</param>
    /// <exception cref="ArgumentException">The plan has another number of intervals.</exception>
    public Conditions PricedBy(BillingPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Grid.Count != Time.Count) throw Throw.WrongLength(nameof(plan), plan.Grid.Count, Time.Count);
        return this with
        {
            ImportPricePerKwh = plan.ImportPricesPerKwhWithTax.ToArray(),
            ExportPricePerKwh = plan.ExportPricesPerKwh.ToArray(),
        };
    }
}
