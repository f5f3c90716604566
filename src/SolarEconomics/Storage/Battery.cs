namespace SolarEconomics;

/// <summary>A battery as the flow model sees it: a store with limits of energy and power, and what each way in and out costs.</summary>
/// <remarks>
/// Energies and powers are at its terminals (DC); stored energy is inside the cells, so that a full battery gives <see cref="UsableKwh"/> ×
/// <see cref="DischargeEfficiency"/>. Losses of the converter stand in <see cref="Converter"/>. Immutable, so safe to share between threads.
/// </remarks>
public sealed partial record Battery
{
    /// <summary>Above this a capacity is asked back: 9,600 was meant to be Wh.</summary>
    private const double MostKwh = 1000;

    /// <summary>Name as the plant's description has it. Default: <c>battery</c>.</summary>
    public string Name { get; init; } = "battery";

    /// <summary>Energy inside the cells between the lowest and the highest charge that may be used. Unit: kWh. Range: 0 to 1,000.</summary>
    public required double UsableKwh { get; init => field = value is >= 0 and <= MostKwh ? value : throw Throw.CapacityAskedBack(nameof(UsableKwh), value, MostKwh); }

    /// <summary>Energy on the name plate. Unit: kWh. Default: 0, not known; then <see cref="WithCRate"/> counts from <see cref="UsableKwh"/>. A run refuses one below <see cref="UsableKwh"/>.</summary>
    public double NameplateKwh { get; init => field = value is >= 0 and <= MostKwh ? value : throw Throw.CapacityAskedBack(nameof(NameplateKwh), value, MostKwh); }

    /// <summary>The most that can be charged, at the terminals. Unit: kW. Default: no limit.</summary>
    public double MostChargeKw { get; init => field = Require.LimitKw(value); } = double.PositiveInfinity;

    /// <summary>The most that can be discharged, at the terminals. Unit: kW. Default: no limit.</summary>
    public double MostDischargeKw { get; init => field = Require.LimitKw(value); } = double.PositiveInfinity;

    /// <summary>Share of what enters the terminals that reaches the cells. Range: above 0 to 1. Default: 1.</summary>
    public double ChargeEfficiency { get; init => field = Require.Efficiency(value); } = 1;

    /// <summary>Share of what leaves the cells that reaches the terminals. Range: above 0 to 1. Default: 1.</summary>
    public double DischargeEfficiency { get; init => field = Require.Efficiency(value); } = 1;

    /// <summary>How charging slows near full. Default: not at all.</summary>
    public ChargeTaper? Taper { get; init; }

    /// <summary>Temperatures outside which it must rest. Default: none known.</summary>
    public TemperatureLimits? Temperatures { get; init; }

    /// <summary>Share of what is stored that it loses as it stands, per 30 days. Range: 0 to below 1. Default: 0.</summary>
    public double SelfDischargePerMonth { get; init => field = Require.Within(value, 0, 0.99, "a fraction per 30 days; 2 % is written 0.02", nameof(SelfDischargePerMonth)); }

    /// <summary>Equalising charges of a flooded lead-acid bank. Default: none.</summary>
    public Equalising? Equalising { get; init; }

    /// <summary>Power that the battery's own electronics take all year. Unit: W. Load of the plant, never self-use. Default: 0.</summary>
    public double StandbyW { get; init => field = Require.AtLeastZero(value, "W"); }

    /// <summary>Energy inside the cells that is kept for outages: given only while the grid is out. Unit: kWh. Default: 0.</summary>
    public double ReserveKwh { get; init => field = Require.AtLeastZero(value, "kWh"); }

    /// <summary>Energy inside the cells at the start. Unit: kWh. Range: 0 to <see cref="UsableKwh"/>. Default: 0.</summary>
    public double StoredAtStartKwh { get; init => field = Require.AtLeastZero(value, "kWh"); }

    /// <summary>Round-trip efficiency at the terminals: <see cref="ChargeEfficiency"/> × <see cref="DischargeEfficiency"/>.</summary>
    public double RoundTripEfficiency => ChargeEfficiency * DischargeEfficiency;

    /// <summary>Share of the stored energy that is left after some hours of rest.</summary>
    /// <param name="hours">Hours. Range: 0 or more.</param>
    /// <remarks>Equation: (1 − s)^(hours / 720).</remarks>
    public double LeftAfter(double hours) => SelfDischargePerMonth == 0 ? 1 : Math.Pow(1 - SelfDischargePerMonth, hours / 720);

    /// <summary>A battery of which the round trip is known only as a whole.</summary>
    /// <param name="usableKwh">Usable energy inside the cells. Unit: kWh.</param>
    /// <param name="roundTrip">Round-trip efficiency at the terminals. Range: above 0 to 1; 90 % is written 0.9.</param>
    /// <param name="powerKw">The most it charges and discharges. Unit: kW. Default: no limit.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <remarks>Equation: each way is the square root of the round trip. Source: storage-1.</remarks>
    public static Battery Of(double usableKwh, double roundTrip, double powerKw = double.PositiveInfinity)
    {
        var oneWay = Math.Sqrt(Require.Efficiency(roundTrip, nameof(roundTrip)));
        return new Battery { UsableKwh = usableKwh, ChargeEfficiency = oneWay, DischargeEfficiency = oneWay, MostChargeKw = powerKw, MostDischargeKw = powerKw };
    }

    /// <summary>A battery of which amp-hours and voltage are known.</summary>
    /// <param name="ampHours">Capacity on the name plate. Unit: Ah.</param>
    /// <param name="volts">Nominal voltage of the bank. Unit: V.</param>
    /// <param name="usableShare">Share of it that may be used. Range: above 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <remarks>Equation: kWh = Ah × V / 1000. Amp-hours without a voltage are no energy.</remarks>
    public static Battery OfAmpHours(double ampHours, double volts, double usableShare)
    {
        var nameplateKwh = Require.Within(ampHours, 0, 100_000, "Ah") * Require.Within(volts, 1, 1500, "V, the nominal voltage of the bank") / 1000;
        return new Battery { NameplateKwh = nameplateKwh, UsableKwh = nameplateKwh * Require.Efficiency(usableShare, nameof(usableShare)) };
    }
}
