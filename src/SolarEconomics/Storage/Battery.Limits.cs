namespace SolarEconomics;

/// <content>What it can take and give in a stretch of time.</content>
public sealed partial record Battery
{
    /// <summary>This battery with its power limits stated as C-rates, as data sheets of cells do.</summary>
    /// <param name="charge">Power of charging over the capacity. Unit: C, which is kW per kWh. Range: 0 to 20; 0.5 C fills it in two hours.</param>
    /// <param name="discharge">Power of discharging over the capacity. Unit: C. Range: 0 to 20.</param>
    /// <returns>The battery with <see cref="MostChargeKw"/> and <see cref="MostDischargeKw"/> set.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A rate is outside its range.</exception>
    /// <remarks>Equation: kW = C × kWh of the nameplate, or of <see cref="UsableKwh"/> where the nameplate is not known. Common practice, no source.</remarks>
    public Battery WithCRate(double charge, double discharge)
    {
        const double Most = 20;
        var capacityKwh = NameplateKwh > 0 ? NameplateKwh : UsableKwh;
        return this with
        {
            MostChargeKw = capacityKwh * Require.Within(charge, 0, Most, "C, kW per kWh of the nameplate; half the capacity in an hour is written 0.5", nameof(charge)),
            MostDischargeKw = capacityKwh * Require.Within(discharge, 0, Most, "C, kW per kWh of the nameplate; half the capacity in an hour is written 0.5", nameof(discharge)),
        };
    }

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
