using NodaTime;

namespace SolarEconomics;

/// <summary>One payment on one day, part of a <see cref="DatedMoneyFlow"/> that carries the currency.</summary>
/// <param name="Date">Day of the payment.</param>
/// <param name="Amount">Positive is received, negative is paid.</param>
public readonly record struct DatedAmount(LocalDate Date, decimal Amount)
{
    /// <summary>Where it was read, for messages: <c>ledger.csv, line 4</c>; <see langword="null"/> where it was not read from a file.</summary>
    public string? Origin { get; init; }
}
