namespace SolarEconomics;

/// <content>What it can take and give in a stretch of time.</content>
public sealed partial record Battery
{
    /// <summary>The most it can take at its terminals.</summary>
    /// <param name="storedKwh">Inside the cells at the start. Unit: kWh.</param>
    /// <param name="hours">Length. Unit: h.</param>
    public double MostChargeKwh(double storedKwh, double hours)
    {
        var intoCells = Taper is null
            ? Math.Max(0, UsableKwh - storedKwh)
            : Taper.MostIntoCells(storedKwh, UsableKwh, MostChargeKw * ChargeEfficiency, hours);
        var byPower = double.IsPositiveInfinity(MostChargeKw) ? MostChargeKw : MostChargeKw * hours;
        return Math.Min(byPower, intoCells / ChargeEfficiency);
    }

    /// <summary>The most it can give at its terminals.</summary>
    /// <param name="storedKwh">Inside the cells at the start. Unit: kWh.</param>
    /// <param name="keptKwh">What is to stay inside. Unit: kWh.</param>
    /// <param name="hours">Length. Unit: h.</param>
    public double MostDischargeKwh(double storedKwh, double keptKwh, double hours)
    {
        var byPower = double.IsPositiveInfinity(MostDischargeKw) ? MostDischargeKw : MostDischargeKw * hours;
        return Math.Min(byPower, Math.Max(0, storedKwh - keptKwh) * DischargeEfficiency);
    }
}
