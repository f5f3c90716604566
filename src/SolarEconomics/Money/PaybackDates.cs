using NodaTime;

namespace SolarEconomics;

/// <summary>When a running sum of dated payments comes back to 0.</summary>
/// <param name="First">First day at whose end it is 0 or above; <see langword="null"/> where there is none.</param>
/// <param name="Lasting">Day from which on it stays 0 or above; <see langword="null"/> where it ends below.</param>
/// <param name="AtEnd">The sum after the last payment; below 0 it says what is short.</param>
public sealed record PaybackDates(LocalDate? First, LocalDate? Lasting, Money AtEnd);
