namespace SolarEconomics;

/// <summary>What one future of a sweep came to, year by year.</summary>
/// <remarks>A single case is no answer about a battery: take the difference to the same case without one (usable 0).</remarks>
public sealed record BatteryCaseResult
{
    /// <summary>The case.</summary>
    public required BatteryCase Case { get; init; }

    /// <summary>Import less feed-in of each year at that year's prices, fixed charges left out. Unit: the currency of the prices.</summary>
    public required IReadOnlyList<double> Cost { get; init; }

    /// <summary>From the grid in each year. Unit: kWh.</summary>
    public required IReadOnlyList<double> ImportKwh { get; init; }

    /// <summary>To the grid in each year. Unit: kWh.</summary>
    public required IReadOnlyList<double> ExportKwh { get; init; }

    /// <summary>What the battery gave at the board in each year. Unit: kWh.</summary>
    public required IReadOnlyList<double> ThroughputKwh { get; init; }

    /// <summary>Inside the cells at the end. Unit: kWh.</summary>
    public required double StoredAtEndKwh { get; init; }

    /// <summary>What is left of the capacity at the end. Unit: kWh.</summary>
    public required double UsableAtEndKwh { get; init; }

    /// <summary>Price and all costs discounted to the start; the cost of a year falls at its end. Unit: the currency of the prices; negative is money paid.</summary>
    /// <remarks>Equation: NPV = −price − Σ cost of year y / (1 + r)^y. Source: money-2.</remarks>
    public required double Npv { get; init; }

    /// <summary>Whether only some years were worked out and the others lie on straight lines between them.</summary>
    public bool IsPreview { get; init; }
}
