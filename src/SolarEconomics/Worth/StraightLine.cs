using NodaTime;

namespace SolarEconomics;

/// <summary>The answer most people draw: all counters times one price, and a straight line through it.</summary>
/// <param name="CountedKwh">The last readings of all counters added up, whatever their measurement point and opening value. Unit: kWh.</param>
/// <param name="PricePerKwh">The one price, tax included. Unit: currency per kWh.</param>
/// <param name="Value">Counted kWh × price.</param>
/// <param name="Cost">What was paid for the plant less grants.</param>
/// <param name="Years">Years from the first purchase to the last record.</param>
/// <param name="FirstPurchase">Day of the first purchase.</param>
/// <remarks>Equation: yearly value = value ÷ years; payback = years + (cost − value) ÷ yearly value = cost ÷ yearly value.
/// Named for what it is: it prices every kWh as if it had been bought today.</remarks>
public sealed record StraightLine(double CountedKwh, decimal PricePerKwh, Money Value, Money Cost, double Years, LocalDate FirstPurchase)
{
    /// <summary>Value per year.</summary>
    public Money YearlyValue => Value with { Amount = Years > 0 ? Value.Amount / (decimal)Years : 0 };

    /// <summary>Years from the first purchase until the line is paid back; <see langword="null"/> where the line does not rise.</summary>
    public double? PaybackYears => YearlyValue.Amount > 0 ? (double)(Cost.Amount / YearlyValue.Amount) : null;
}
