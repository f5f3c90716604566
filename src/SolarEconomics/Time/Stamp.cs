namespace SolarEconomics;

/// <summary>A time as a record writes it, before the zone is known.</summary>
/// <param name="LocalMs">Milliseconds since 1970 on the clock that wrote it.</param>
/// <param name="OffsetMinutes">Offset from UTC where the text states one.</param>
/// <param name="Fineness">How much of a time the text states.</param>
internal readonly record struct Stamp(long LocalMs, int? OffsetMinutes, StampFineness Fineness);
