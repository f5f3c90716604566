namespace SolarEconomics;

/// <summary>The intervals of one billing day.</summary>
internal readonly record struct BilledDay(int First, int Count, int Period);
