namespace SolarEconomics;

/// <summary>A battery as bare numbers for loops, counted at the board.</summary>
internal readonly record struct BatteryNumbers(double UsableKwh, double MostChargeKw, double MostDischargeKw, double Into, double OutOf, double StoredAtStartKwh)
{
    /// <summary>A power so large that it never binds, yet finite: infinity times a length of zero would be no number.</summary>
    private const double Unbound = 1e12;

    internal static BatteryNumbers Of(BatteryCase @case)
    {
        var battery = @case.Battery;
        if (battery.Taper is not null) throw Throw.NotInASweep(nameof(Battery.Taper));
        if (battery.Temperatures is not null) throw Throw.NotInASweep(nameof(Battery.Temperatures));
        if (battery.SelfDischargePerMonth > 0) throw Throw.NotInASweep(nameof(Battery.SelfDischargePerMonth));
        if (battery.Equalising is not null) throw Throw.NotInASweep(nameof(Battery.Equalising));
        if (battery.ReserveKwh > 0) throw Throw.NotInASweep(nameof(Battery.ReserveKwh));
        ConditionsCheck.Demand(battery);
        return new BatteryNumbers(battery.UsableKwh, Most(battery.MostChargeKw, @case), Most(battery.MostDischargeKw, @case),
            battery.ChargeEfficiency, battery.DischargeEfficiency, battery.StoredAtStartKwh);
    }

    private static double Most(double kw, BatteryCase @case) => Math.Min(Unbound, Math.Min(kw, @case.ConverterKw));
}
