namespace SolarEconomics;

/// <summary>Temperatures of the cells outside which a battery must rest.</summary>
/// <param name="ChargeFromC">No charging below. Unit: °C. Range: -60 to 120; lithium cells are harmed by charging below their maker's limit, often 0 °C.</param>
/// <param name="DischargeFromC">No discharging below. Unit: °C. Range: -60 to 120.</param>
/// <param name="UntilC">Neither above. Unit: °C. Range: -60 to 120; a run refuses limits that lie above it.</param>
public sealed record TemperatureLimits(double ChargeFromC, double DischargeFromC, double UntilC)
{
    /// <summary>No charging below. Unit: °C.</summary>
    public double ChargeFromC { get; init => field = OfCells(value, nameof(ChargeFromC)); } = OfCells(ChargeFromC, nameof(ChargeFromC));

    /// <summary>No discharging below. Unit: °C.</summary>
    public double DischargeFromC { get; init => field = OfCells(value, nameof(DischargeFromC)); } = OfCells(DischargeFromC, nameof(DischargeFromC));

    /// <summary>Neither above. Unit: °C.</summary>
    public double UntilC { get; init => field = OfCells(value, nameof(UntilC)); } = OfCells(UntilC, nameof(UntilC));

    internal bool MayCharge(double cellC) => cellC >= ChargeFromC && cellC <= UntilC;

    internal bool MayDischarge(double cellC) => cellC >= DischargeFromC && cellC <= UntilC;

    private static double OfCells(double value, string name) => Require.Within(value, -60, 120, "°C of the cells", name);
}
