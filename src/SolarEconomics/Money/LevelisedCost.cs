using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>A levelised cost of energy (LCOE) with what it counts, so that it is not compared with something else.</summary>
/// <param name="PerKwh">Cost per kWh; its basis says nominal or real.</param>
/// <param name="DiscountRate">Rate used for money and kWh.</param>
/// <param name="Energy">Which kWh are counted.</param>
/// <param name="PresentCost">Present value of the costs.</param>
/// <param name="DiscountedKwh">Discounted energy. Unit: kWh.</param>
/// <param name="Years">Last year counted.</param>
public sealed record LevelisedCost(
    Money PerKwh, Rate DiscountRate, EnergyCounted Energy, Money PresentCost, double DiscountedKwh, int Years) : IFinding
{
    /// <summary>The day to which money and kWh are discounted; <see langword="null"/> where they are given by year.</summary>
    public LocalDate? FirstDay { get; init; }

    /// <summary>The last day on which money or kWh count; <see langword="null"/> where they are given by year.</summary>
    public LocalDate? LastDay { get; init; }

    /// <summary>How days became years; <see langword="null"/> where amounts are given by year.</summary>
    public DayCount? DaysCounted { get; init; }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        var kwh = Energy == EnergyCounted.GeneratedAc ? "generated AC kWh" : "delivered kWh";
        var span = FirstDay is { } first && LastDay is { } last
            ? $"from {Wording.Day(first, culture)} to {Wording.Day(last, culture)}"
            : $"over {Wording.Count(Years, "year", culture)}";
        return new Finding(
            Wording.Price(PerKwh, culture) + " a kWh",
            $"is the {(PerKwh.Basis.IsNominal ? "nominal" : "real")} levelised cost per {kwh} {span}: " +
            $"{Wording.Whole(PresentCost, culture)} of costs over {DiscountedKwh.ToString("#,0", culture)} kWh, both discounted.")
        {
            Notes =
            [
                $"Discount rate: {DiscountRate}." + (DaysCounted is { } count ? $" Years are {DayCountWords.Say(count)}." : ""),
                "Costs are those in the flow, with its replacements and residual value; loan flows are not part of it unless they were put in.",
                "It is not a tariff: compare it only with a price path discounted the same way.",
            ],
        };
    }
}
