using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>When a running sum of dated payments comes back to 0.</summary>
/// <param name="First">First day at whose end it is 0 or above; <see langword="null"/> where there is none.</param>
/// <param name="Lasting">Day from which on it stays 0 or above; <see langword="null"/> where it ends below.</param>
/// <param name="AtEnd">The sum after the last payment; below 0 it says what is short.</param>
public sealed record PaybackDates(LocalDate? First, LocalDate? Lasting, Money AtEnd) : IFinding
{
    /// <summary>The rate at which payments were discounted to the first day; <see langword="null"/> where they were not.</summary>
    public Rate? DiscountRate { get; init; }

    /// <summary>How days became years; <see langword="null"/> where nothing was discounted.</summary>
    public DayCount? DaysCounted { get; init; }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        var left = Wording.Exact(AtEnd, culture);
        var finding = (First, Lasting) switch
        {
            (null, _) => new Finding("Not paid back", $"The sum after the last payment is {left}."),
            ({ } first, null) => new Finding("Not paid back for good", $"The sum reaches 0 on {Print(first)}, falls below it again, and is {left} after the last payment."),
            ({ } first, { } lasting) when first == lasting => new Finding(Print(lasting), $"is the day on which what was paid has come back; the sum after the last payment is {left}."),
            ({ } first, { } lasting) => new Finding(Print(lasting), $"is the day from which on what was paid has come back for good. It had come back first on {Print(first)}; the sum after the last payment is {left}."),
        };
        return DiscountRate is { } rate && DaysCounted is { } count
            ? finding with { Notes = [$"Payments count by their value on the first day at {rate}; years are {DayCountWords.Say(count)}."] }
            : finding;

        string Print(LocalDate day) => day.ToString("d MMM uuuu", culture);
    }
}
