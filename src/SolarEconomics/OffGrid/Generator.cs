namespace SolarEconomics;

/// <summary>A generator that feeds the board. In an interval it runs whole or not at all.</summary>
/// <param name="RatedKw">Rated power. Unit: kW. Range: 0.001 to 1,000.</param>
/// <param name="Fuel">Fuel against output.</param>
public sealed record Generator(double RatedKw, FuelLine Fuel)
{
    /// <summary>Rated power. Unit: kW.</summary>
    public double RatedKw { get; init => field = Checked(value); } = Checked(RatedKw);

    /// <summary>Below this share of its rated power it burns fuel as at it: an engine under light load fouls and gains nothing. Range: 0 to 1. Default: 0.3.</summary>
    /// <remarks>Common practice, no source.</remarks>
    public double LeastLoadShare { get; init => field = Require.Fraction(value, nameof(LeastLoadShare)); } = 0.3;

    /// <summary>Hours in which it must be silent. Default: none.</summary>
    public IReadOnlyList<HourSpan> QuietHours { get; init; } = [];

    /// <summary>Price of fuel. Unit: currency per litre. Default: 0.</summary>
    public double FuelPricePerLitre { get; init => field = Require.AtLeastZero(value, "currency per litre"); }

    /// <summary>Oil, filters, overhaul. Unit: currency per hour of running. Default: 0.</summary>
    public double MaintenancePerHour { get; init => field = Require.AtLeastZero(value, "currency per hour"); }

    /// <summary>Fuel for an output over some hours, least load counted. Unit: litres.</summary>
    /// <param name="kwh">Energy given. Unit: kWh.</param>
    /// <param name="hours">Hours of running.</param>
    public double LitresFor(double kwh, double hours) => Fuel.Litres(RatedKw, hours, Math.Max(kwh, LeastLoadShare * RatedKw * hours));

    internal bool IsQuietAt(int minuteOfDay)
    {
        foreach (var hours in QuietHours)
            if (hours.Contains(minuteOfDay)) return true;
        return false;
    }

    private static double Checked(double ratedKw) => Require.Within(ratedKw, 0.001, 1000, "kW of rated power; 4,500 W is written 4.5", nameof(RatedKw));
}
