namespace SolarEconomics;

/// <summary>What a control wants done in one interval. The <c>default</c> lets the battery rest.</summary>
/// <param name="ChargeKwh">Into the battery, at its terminals. Unit: kWh. What arrays and generator do not cover comes from the grid.</param>
/// <param name="DischargeKwh">Out of the battery, at its terminals. Unit: kWh. What use does not take is exported. Not together with <paramref name="ChargeKwh"/>.</param>
public readonly record struct Order(double ChargeKwh = 0, double DischargeKwh = 0)
{
    /// <summary>The battery rests.</summary>
    public static Order Rest => default;

    /// <summary>Output of the generator at the board. Unit: kWh. 0 leaves it off. Default: 0.</summary>
    public double GeneratorKwh { get; init; }

    /// <summary>Wanted use that is switched off on purpose. Unit: kWh. Default: 0. Parts of the lowest priority go first.</summary>
    public double ShedKwh { get; init; }

    /// <summary>How much of the waiting loads runs now. Unit: kWh. Default: <see langword="null"/>, what <see cref="Situation.DeferrableKwh"/> proposes.</summary>
    public double? DeferrableKwh { get; init; }

    /// <summary>The most that is to be exported now, for example 0 while export costs. Unit: kWh. Default: <see langword="null"/>, no wish.</summary>
    public double? MostExportKwh { get; init; }

    /// <summary>Charge.</summary>
    /// <param name="kwh">At the battery's terminals. Unit: kWh.</param>
    public static Order Charge(double kwh) => new(ChargeKwh: kwh);

    /// <summary>Discharge.</summary>
    /// <param name="kwh">At the battery's terminals. Unit: kWh.</param>
    public static Order Discharge(double kwh) => new(DischargeKwh: kwh);
}
