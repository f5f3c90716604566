namespace SolarEconomics;

/// <summary>Looks at every series before a run: length, gaps, range; each mistake is named with its local time.</summary>
internal static class ConditionsCheck
{
    internal static void Demand(EnergySystem system, Conditions conditions)
    {
        if (system.Grid is { IsOffGrid: true, RunsInOutages: false }) throw Throw.GridOfNothing();
        if (system.Generator is { IsAlwaysQuiet: true } generator) throw Throw.AlwaysQuiet(generator);
        var names = new HashSet<string>(StringComparer.Ordinal);
        foreach (var array in conditions.Arrays)
            if (!names.Add(array.Name)) throw Throw.TwoArraysOfAName(array.Name);
        foreach (var array in conditions.Arrays) Energies(conditions.Time, array.PotentialKwh, $"array \"{array.Name}\"");
        Inverters(conditions.Arrays);
        Values(conditions.Time, conditions.ImportPricePerKwh, "price of import", -1000, 1000);
        Values(conditions.Time, conditions.ExportPricePerKwh, "price of export", -1000, 1000);
        Values(conditions.Time, conditions.MostExportKw, "export limit in kW", 0, Require.MostKw, orInfinity: true);
        Values(conditions.Time, conditions.BatteryC, "temperature of the battery in °C", -60, 120);
        if (!conditions.GridIsOut.IsEmpty && conditions.GridIsOut.Length != conditions.Time.Count)
            throw Throw.SeriesLength("outages", conditions.GridIsOut.Length, conditions.Time.Count);
        if (system.Battery is not { } battery) return;
        Demand(battery);
        if (battery.Temperatures is { } limits && !conditions.BatteryC.IsEmpty) Temperatures(conditions.Time, conditions.BatteryC.Span, limits);
    }

    /// <summary>A battery that may do nothing in any interval has its temperatures in another unit, or its limits.</summary>
    private static void Temperatures(Timeline time, ReadOnlySpan<double> cellC, TemperatureLimits limits)
    {
        var (low, high) = (cellC[0], cellC[0]);
        foreach (var c in cellC)
        {
            if (limits.MayCharge(c) || limits.MayDischarge(c)) return;
            (low, high) = (Math.Min(low, c), Math.Max(high, c));
        }
        throw Throw.NeverWithinTemperatures(limits, time.LocalStartOf(0), cellC[0], low, high);
    }

    /// <summary>What two fields of a battery say against each other.</summary>
    internal static void Demand(Battery battery)
    {
        if (battery.NameplateKwh > 0 && battery.UsableKwh > battery.NameplateKwh) throw Throw.UsableAboveNameplate(battery.UsableKwh, battery.NameplateKwh);
        if (battery.StoredAtStartKwh > battery.UsableKwh) throw Throw.StoreOutsideBattery(nameof(Battery.StoredAtStartKwh), battery.StoredAtStartKwh, battery.UsableKwh);
        if (battery.ReserveKwh > battery.UsableKwh) throw Throw.StoreOutsideBattery(nameof(Battery.ReserveKwh), battery.ReserveKwh, battery.UsableKwh);
        if (battery.Temperatures is not { } limits) return;
        if (limits.ChargeFromC > limits.UntilC) throw Throw.UpsideDownTemperatures(nameof(TemperatureLimits.ChargeFromC), limits.ChargeFromC, limits.UntilC);
        if (limits.DischargeFromC > limits.UntilC) throw Throw.UpsideDownTemperatures(nameof(TemperatureLimits.DischargeFromC), limits.DischargeFromC, limits.UntilC);
    }

    private static void Inverters(IReadOnlyList<ArraySupply> arrays)
    {
        foreach (var array in arrays)
        {
            if (array.Inverter is not { } inverter) continue;
            if (array.Coupling is not Coupling.Ac || array.Efficiency != 1 || !double.IsPositiveInfinity(array.MostKw)) throw Throw.TwoDevicesOfAnArray(array, inverter);
            if (arrays.First(a => a.Inverter?.Name == inverter.Name).Inverter!.Type is var type && type != inverter.Type) throw Throw.TwoTypesOfAnInverter(inverter, type);
        }
    }

    private static void Energies(Timeline time, ReadOnlyMemory<double> series, string what)
    {
        if (series.Length != time.Count) throw Throw.SeriesLength(what, series.Length, time.Count);
        var kwh = series.Span;
        for (var i = 0; i < kwh.Length; i++)
            if (!(kwh[i] >= 0 && kwh[i] < double.PositiveInfinity)) throw Throw.NotAnEnergy(what, i, time.LocalStartOf(i), kwh[i]);
    }

    private static void Values(Timeline time, ReadOnlyMemory<double> series, string what, double low, double high, bool orInfinity = false)
    {
        if (series.IsEmpty) return;
        if (series.Length != time.Count) throw Throw.SeriesLength(what, series.Length, time.Count);
        var values = series.Span;
        for (var i = 0; i < values.Length; i++)
            if (!(values[i] >= low && values[i] <= high) && !(orInfinity && double.IsPositiveInfinity(values[i]))) throw Throw.NotAValue(what, i, time.LocalStartOf(i), values[i], low, high, orInfinity ? ", or infinity for no limit; 4,500 W is written 4.5" : "");
    }
}
