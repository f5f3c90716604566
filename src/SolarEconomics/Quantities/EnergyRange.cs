namespace SolarEconomics;

/// <summary>The lowest and the highest amount of energy that the records allow. Unit: kilowatt-hours.</summary>
/// <param name="LowKwh">Lowest amount consistent with the records.</param>
/// <param name="HighKwh">Highest amount consistent with the records, not below <paramref name="LowKwh"/>.</param>
public readonly record struct EnergyRange(double LowKwh, double HighKwh)
{
    /// <summary>A range of no width.</summary>
    /// <param name="kwh">The one amount.</param>
    public static EnergyRange Exactly(double kwh) => new(kwh, kwh);

    /// <summary>A range without a high end.</summary>
    /// <param name="kwh">The lowest amount.</param>
    public static EnergyRange AtLeast(double kwh) => new(kwh, double.PositiveInfinity);

    /// <summary>A range that excludes nothing, amounts below 0 included.</summary>
    public static EnergyRange Unbounded => new(double.NegativeInfinity, double.PositiveInfinity);

    /// <summary>Width of the range in kWh, 0 where the records tell exactly.</summary>
    public double WidthKwh => HighKwh - LowKwh;

    /// <summary>Middle of the range in kWh.</summary>
    public double MiddleKwh => (LowKwh + HighKwh) / 2.0;

    /// <summary>Sums of both ends.</summary>
    public static EnergyRange operator +(EnergyRange a, EnergyRange b) => new(a.LowKwh + b.LowKwh, a.HighKwh + b.HighKwh);

    /// <summary>Whether an amount lies inside, ends included.</summary>
    /// <param name="kwh">Kilowatt-hours.</param>
    public bool Contains(double kwh) => kwh >= LowKwh && kwh <= HighKwh;
}
