namespace SolarEconomics;

/// <summary>Temperatures of the cells outside which a battery must rest.</summary>
/// <param name="ChargeFromC">No charging below. Unit: °C; lithium cells are harmed by charging below their maker's limit, often 0 °C.</param>
/// <param name="DischargeFromC">No discharging below. Unit: °C.</param>
/// <param name="UntilC">Neither above. Unit: °C.</param>
public sealed record TemperatureLimits(double ChargeFromC, double DischargeFromC, double UntilC)
{
    internal bool MayCharge(double cellC) => cellC >= ChargeFromC && cellC <= UntilC;

    internal bool MayDischarge(double cellC) => cellC >= DischargeFromC && cellC <= UntilC;
}
