namespace SolarEconomics;

/// <summary>Two readings of one counter, and the least and most that was counted between them. Unit: kWh.</summary>
internal sealed record CounterWindow(CounterMark Before, CounterMark After, double LowKwh, double HighKwh);

