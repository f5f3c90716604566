using NodaTime;

namespace SolarEconomics;

/// <summary>What one day lost.</summary>
/// <param name="Date">The day.</param>
/// <param name="Kwh">Expected less measured; below 0 where more came than expected.</param>
/// <param name="Value">What it would have been worth by the hours in which it would have come; <see langword="null"/> without tariffs or import on record.</param>
public sealed record LostDay(LocalDate Date, double Kwh, Money? Value);
