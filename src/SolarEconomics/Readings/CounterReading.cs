using NodaTime;

namespace SolarEconomics;

/// <summary>One reading of a lifetime counter, as a display or a photograph shows it.</summary>
/// <param name="Date">Local day on which it was read.</param>
/// <param name="Kwh">What the counter showed, in kWh.</param>
/// <param name="DaysUncertain">The day may be off by this many days either way, 0 or more.</param>
/// <param name="Photo">Name of a photo file, where there is one.</param>
/// <param name="Note">The owner's note, where there is one.</param>
/// <param name="Line">Line in the file, counted from 1.</param>
public sealed record CounterReading(LocalDate Date, double Kwh, int DaysUncertain = 0, string? Photo = null, string? Note = null, int Line = 0);
