namespace SolarEconomics;

/// <summary>What one array could have fed in during a run, what was left out, and what it fed in. Counted behind its inverter or controller.</summary>
/// <param name="Name">Name of the array.</param>
/// <param name="PotentialKwh">What it could have fed in without a power limit of its device. Unit: kWh.</param>
/// <param name="ClippedKwh">Left out by its device's power limit; of a shared one its part of what all bring. Unit: kWh.</param>
/// <param name="CurtailedKwh">Left out because nothing took it: full battery, export limit, outage. Unit: kWh.</param>
/// <param name="FedInKwh">What it fed in. Unit: kWh.</param>
public sealed record ArrayYield(string Name, double PotentialKwh, double ClippedKwh, double CurtailedKwh, double FedInKwh);
