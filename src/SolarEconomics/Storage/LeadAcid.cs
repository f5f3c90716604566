namespace SolarEconomics;

/// <summary>A lead-acid bank, whose capacity depends on how fast and how cold it is emptied.</summary>
/// <param name="AmpHours">Capacity at the rated hours and the rated temperature. Unit: Ah.</param>
/// <param name="RatedHours">Hours of the discharge at which it was rated. Unit: h; 20 h for most banks in homes.</param>
/// <param name="Volts">Nominal voltage. Unit: V.</param>
public sealed record LeadAcid(double AmpHours, double RatedHours, double Volts)
{
    private const double MostHours = 240;

    /// <summary>Capacity at the rated hours and the rated temperature. Unit: Ah.</summary>
    public double AmpHours { get; init => field = Require.Within(value, 0.001, 100_000, "Ah", nameof(AmpHours)); } = Require.Within(AmpHours, 0.001, 100_000, "Ah", nameof(AmpHours));

    /// <summary>Hours of the discharge at which it was rated. Unit: h.</summary>
    public double RatedHours { get; init => field = Require.Within(value, 0.1, 1000, "h of the rated discharge", nameof(RatedHours)); } = Require.Within(RatedHours, 0.1, 1000, "h of the rated discharge", nameof(RatedHours));

    /// <summary>Nominal voltage. Unit: V.</summary>
    public double Volts { get; init => field = Require.Within(value, 1, 1500, "V, the nominal voltage of the bank", nameof(Volts)); } = Require.Within(Volts, 1, 1500, "V, the nominal voltage of the bank", nameof(Volts));

    /// <summary>Peukert's exponent. Range: 1 to 1.6. Default: 1.2; 1.1 for sealed and 1.3 for old flooded cells are common.</summary>
    /// <remarks>Common practice, no source.</remarks>
    public double Exponent { get; init => field = Require.Within(value, 1, 1.6, "Peukert's exponent", nameof(Exponent)); } = 1.2;

    /// <summary>Share of capacity lost per kelvin below <see cref="RatedC"/>. Range: 0 to 0.03. Default: 0.008.</summary>
    /// <remarks>Common practice, no source.</remarks>
    public double LossPerKelvin { get; init => field = Require.Within(value, 0, 0.03, "a fraction per kelvin; 0.8 % is written 0.008", nameof(LossPerKelvin)); } = 0.008;

    /// <summary>Temperature of the rating. Unit: °C. Default: 25.</summary>
    public double RatedC { get; init => field = Require.Within(value, 0, 40, "°C", nameof(RatedC)); } = 25;

    /// <summary>Days from one equalising charge to the next. Default: 30.</summary>
    public double EqualiseEveryDays { get; init => field = Require.Within(value, 1, 3650, "days", nameof(EqualiseEveryDays)); } = 30;

    /// <summary>Length of an equalising charge. Unit: h. Default: 0, none.</summary>
    public double EqualiseHours { get; init => field = Require.Within(value, 0, 24, "h", nameof(EqualiseHours)); }

    /// <summary>Current of an equalising charge as a share of the amp-hours. Range: 0 to 0.1. Default: 0.03.</summary>
    public double EqualiseRate { get; init => field = Require.Within(value, 0, 0.1, "A per Ah", nameof(EqualiseRate)); } = 0.03;

    /// <summary>Hours that it holds a current.</summary>
    /// <param name="amps">Current. Unit: A. Range: above 0.</param>
    /// <returns>Hours at the rated temperature.</returns>
    /// <remarks>Equation (Peukert): t = H · (C / (I · H))^k. Source: storage-6.</remarks>
    public double HoursAt(double amps) => RatedHours * Math.Pow(AmpHours / (Require.Within(amps, 1e-6, 1e6, "A") * RatedHours), Exponent);

    /// <summary>Amp-hours that it gives at a current.</summary>
    /// <param name="amps">Current. Unit: A. Range: above 0.</param>
    public double AmpHoursAt(double amps) => amps * HoursAt(amps);

    /// <summary>Share of capacity at a temperature.</summary>
    /// <param name="cellC">Temperature of the cells. Unit: °C.</param>
    /// <returns>A fraction from 0 to 1: warmth above the rating is not counted as a gain, as it is paid for with life.</returns>
    public double ShareAt(double cellC) => Math.Clamp(1 - (LossPerKelvin * (RatedC - Require.Within(cellC, -40, 60, "°C"))), 0, 1);

    /// <summary>Energy that equalising on time would take in a year, all of it lost as heat and gas; a run says what it did take. Unit: kWh.</summary>
    /// <remarks>Equation: 365 / days × hours × rate × Ah × V / 1000.</remarks>
    public double EqualisingKwhPerYear => 365 / EqualiseEveryDays * EqualiseHours * EqualiseRate * AmpHours * Volts / 1000;

    /// <summary>The bank as the flow model sees it, at the current and temperature of its usual work.</summary>
    /// <param name="amps">Usual current of discharge. Unit: A. Range: what empties the bank within 240 h, beyond which Peukert's law gives more than any bank holds.</param>
    /// <param name="cellC">Usual temperature. Unit: °C.</param>
    /// <param name="depth">Share of the capacity that is used. Range: above 0 to 1; 0.5 is common for a long life.</param>
    /// <param name="absorptionHours">Hours from 80 % to full, as charging slows. Unit: h. Range: 0.5 to 12.</param>
    /// <remarks>The taper starts at 80 % of the nameplate and its power at full is set so that the last fifth takes the absorption hours.
    /// A current far below the rated one may draw more than the nameplate states; the battery then carries what it gives at that current as its nameplate.</remarks>
    /// <exception cref="ArgumentException">Nothing is left of the capacity at that temperature.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Battery AsBattery(double amps, double cellC, double depth, double absorptionHours)
    {
        if (ShareAt(cellC) == 0) throw Throw.NothingLeftInCold(cellC, LossPerKelvin, RatedC);
        if (HoursAt(amps) is > MostHours and var held) throw Throw.SlowerThanPeukert(nameof(amps), amps, held, MostHours);
        var fullKwh = AmpHoursAt(amps) * ShareAt(cellC) * Volts / 1000;
        var usableKwh = fullKwh * Require.Efficiency(depth, nameof(depth));
        var mostKw = AmpHours * 0.2 * Volts / 1000;
        var fromShare = Math.Max(0, 1 - (0.2 / depth));
        return new Battery
        {
            NameplateKwh = Math.Max(AmpHours * Volts / 1000, usableKwh), UsableKwh = usableKwh, MostChargeKw = mostKw, MostDischargeKw = mostKw,
            Taper = ChargeTaper.Lasting(fromShare, usableKwh, mostKw, Require.Within(absorptionHours, 0.5, 12, "h", nameof(absorptionHours))),
            Equalising = EqualiseHours > 0 ? new Equalising(EqualiseEveryDays, EqualiseHours, EqualiseRate * AmpHours * Volts / 1000) : null,
        };
    }
}
