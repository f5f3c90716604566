namespace SolarEconomics.Solvers;

/// <summary>Choices for the best that was possible.</summary>
public sealed record BestPossibleOptions
{
    /// <summary>The most intervals that one linear program takes. Longer spans go in windows side by side, each free to begin and end at any charge, which keeps
    /// the bound and loosens it by at most a full battery each. Range: 1 to 20,000. Default: 8,784, the hours of a leap year.</summary>
    public int MostIntervals
    {
        get;
        init => field = value is >= 1 and <= 20_000 ? value : throw new ArgumentOutOfRangeException(nameof(MostIntervals), value, "Expected a whole number from 1 to 20,000.");
    } = 8784;

    /// <summary>The tariff whose whole bills are judged, with blocks, demand, fixed charges and rounding, laid on the intervals of the run. Default: <see langword="null"/>,
    /// the conditions' prices per kWh alone.</summary>
    /// <remarks>Blocks that get dearer and demand with its memory are in the bound as they are; blocks that get cheaper count at their lowest price, minimum bills
    /// and limits of credit not at all. A linear program then takes whole billing periods, whatever <see cref="MostIntervals"/>.</remarks>
    public BillingPlan? Bills { get; init; }

    /// <summary>What a kWh of wanted use that is not served costs. Unit: currency per kWh. Range: 0 or more. Default: <see langword="null"/>, none is stated: in every
    /// interval the best serves as much as the control did.</summary>
    public double? UnservedPricePerKwh
    {
        get;
        init => field = value is null or (>= 0 and < double.PositiveInfinity) ? value
            : throw new ArgumentOutOfRangeException(nameof(UnservedPricePerKwh), value, "Expected a price of 0 or more per kWh.");
    }
}
