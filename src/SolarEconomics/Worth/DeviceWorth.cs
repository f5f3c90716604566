namespace SolarEconomics;

/// <summary>What one device's share of the generation was worth.</summary>
/// <param name="Device">Name of the device.</param>
/// <param name="GeneratedKwh">Its generation at the board as its own records have it; what the meter shows beyond all devices belongs to none. Unit: kWh of AC.</param>
/// <param name="Value">Its part of the value to date; the parts of all devices sum to it.</param>
/// <param name="Paid">Purchases and running costs less grants and sales that the ledger lists for it; <see langword="null"/> without a ledger.</param>
public sealed record DeviceWorth(string Device, double GeneratedKwh, Money Value, Money? Paid)
{
    /// <summary>Value of a kWh it made; <see langword="null"/> where it made none.</summary>
    public Money? ValuePerKwh => GeneratedKwh > 0 ? Value with { Amount = Value.Amount / (decimal)GeneratedKwh } : null;
}
