namespace SolarEconomics;

/// <summary>What a kWh through a battery costs in wear: on average, and at the margin, where it brings replacement forward.</summary>
/// <param name="Price">Price of replacing it. Unit: any currency.</param>
/// <param name="CalendarYears">Years that it lasts however little it works. Range: 0.01 to 1,000.</param>
/// <param name="LifeKwh">Throughput that it lasts, at the terminals. Unit: kWh. Range: above 0.</param>
/// <param name="KwhPerYear">Throughput of a year. Unit: kWh. Range: 0 or more.</param>
/// <remarks>Undiscounted. Source: storage-4.</remarks>
public sealed record BatteryWear(double Price, double CalendarYears, double LifeKwh, double KwhPerYear)
{
    /// <summary>Price of replacing it. Unit: any currency.</summary>
    public double Price { get; init => field = Require.AtLeastZero(value, "currency"); } = Require.AtLeastZero(Price, "currency", nameof(Price));

    /// <summary>Years that it lasts however little it works.</summary>
    public double CalendarYears { get; init => field = Require.Within(value, 0.01, 1000, "years", nameof(CalendarYears)); } = Require.Within(CalendarYears, 0.01, 1000, "years", nameof(CalendarYears));

    /// <summary>Throughput that it lasts, at the terminals. Unit: kWh.</summary>
    public double LifeKwh { get; init => field = Require.Within(value, 0.001, 1e9, "kWh of throughput", nameof(LifeKwh)); } = Require.Within(LifeKwh, 0.001, 1e9, "kWh of throughput", nameof(LifeKwh));

    /// <summary>Throughput of a year. Unit: kWh.</summary>
    public double KwhPerYear { get; init => field = Require.AtLeastZero(value, "kWh a year"); } = Require.AtLeastZero(KwhPerYear, "kWh a year", nameof(KwhPerYear));

    /// <summary>Years until it is replaced: the calendar or the throughput, whichever ends first.</summary>
    public double LifeYears => Math.Min(CalendarYears, KwhPerYear > 0 ? LifeKwh / KwhPerYear : double.PositiveInfinity);

    /// <summary>Whether the calendar ends it first; then a further kWh wears nothing.</summary>
    public bool CalendarDecides => KwhPerYear * CalendarYears <= LifeKwh;

    /// <summary>Price over all kWh of its life. Unit: currency per kWh; 0 where it never works.</summary>
    public double AveragePerKwh => KwhPerYear > 0 ? Price / (KwhPerYear * LifeYears) : 0;

    /// <summary>What one further kWh costs by bringing replacement forward. Unit: currency per kWh.</summary>
    /// <remarks>Equation: 0 while the calendar decides, else price / life throughput.</remarks>
    public double MarginalPerKwh => CalendarDecides ? 0 : Price / LifeKwh;
}
