namespace SolarEconomics;

/// <summary>A charge for being connected, whatever is used.</summary>
/// <param name="Name">Name on the bill.</param>
/// <param name="Amount">Charge before tax for one <paramref name="Per"/>, in the tariff's currency.</param>
/// <param name="Per">What it is counted by.</param>
public sealed record SupplyCharge(string Name, decimal Amount, ChargePeriod Per = ChargePeriod.Day) : TariffPart(Name);
