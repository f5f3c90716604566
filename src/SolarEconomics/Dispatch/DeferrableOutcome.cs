namespace SolarEconomics;

/// <summary>How a waiting load fared in a run.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Kwh">What it was given in each interval. Unit: kWh.</param>
/// <param name="MissedKwh">What it had not got by its deadlines. Unit: kWh.</param>
public sealed record DeferrableOutcome(string Name, ReadOnlyMemory<double> Kwh, double MissedKwh);
