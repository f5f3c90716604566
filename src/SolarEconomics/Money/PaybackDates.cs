using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>When a running sum of dated payments comes back to 0.</summary>
/// <param name="First">First day at whose end it is 0 or above; <see langword="null"/> where there is none.</param>
/// <param name="Lasting">Day from which on it stays 0 or above; <see langword="null"/> where it ends below.</param>
/// <param name="AtEnd">The sum after the last payment; below 0 it says what is short.</param>
public sealed record PaybackDates(LocalDate? First, LocalDate? Lasting, Money AtEnd) : IFinding
{
    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        var left = AtEnd.Amount.ToString("#,0.00", culture) + " " + AtEnd.Currency;
        return (First, Lasting) switch
        {
            (null, _) => new Finding("Not paid back", $"The sum after the last payment is {left}."),
            ({ } first, null) => new Finding("Not paid back for good", $"The sum reaches 0 on {Print(first)}, falls below it again, and is {left} after the last payment."),
            ({ } first, { } lasting) when first == lasting => new Finding(Print(lasting), $"is the day on which what was paid has come back; the sum after the last payment is {left}."),
            ({ } first, { } lasting) => new Finding(Print(lasting), $"is the day from which on what was paid has come back for good. It had come back first on {Print(first)}; the sum after the last payment is {left}."),
        };

        string Print(LocalDate day) => day.ToString("d MMM uuuu", culture);
    }
}
