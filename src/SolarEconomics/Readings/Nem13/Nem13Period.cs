namespace SolarEconomics;

/// <summary>One 250 record: the energy of a register between two readings of it.</summary>
/// <param name="StartTicks">Time of the earlier reading, since 1970.</param>
/// <param name="EndTicks">Time of the later one.</param>
/// <param name="Kwh">Quantity in kWh, or in its own unit where that is no active energy; 0 where there is none.</param>
/// <param name="Quality">What is known of it.</param>
/// <param name="WentBack">Whether the register showed less at the end.</param>
/// <param name="Updated">When the record was last changed, as it is written.</param>
/// <param name="Line">Line in the file.</param>
internal sealed record Nem13Period(long StartTicks, long EndTicks, double Kwh, Quality Quality, bool WentBack, string Updated, int Line);
