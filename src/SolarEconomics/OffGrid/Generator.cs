namespace SolarEconomics;

/// <summary>A generator that feeds the board. In an interval it runs whole or not at all.</summary>
/// <param name="RatedKw">Rated power. Unit: kW. Range: 0.001 to 1,000.</param>
/// <param name="Fuel">Fuel against output.</param>
public sealed record Generator(double RatedKw, FuelLine Fuel)
{
    private const double LeastKw = 0.001;
    private const double LeastLitresPerKwh = 0.09;

    /// <summary>Rated power. Unit: kW.</summary>
    public double RatedKw { get; init => field = Require.PowerKw(value, LeastKw); } = Require.PowerKw(RatedKw, LeastKw, nameof(RatedKw));

    /// <summary>Fuel against output. At full load an engine burns 0.09 litres per kWh or more: a litre of diesel holds about 10.7 kWh of heat.</summary>
    /// <remarks>Common practice, no source.</remarks>
    public FuelLine Fuel { get; init => field = Checked(value); } = Checked(Fuel);

    /// <summary>Below this share of its rated power it burns fuel as at it: an engine under light load fouls and gains nothing. Range: 0 to 1. Default: 0.3.</summary>
    /// <remarks>Common practice, no source.</remarks>
    public double LeastLoadShare { get; init => field = Require.Fraction(value, nameof(LeastLoadShare)); } = 0.3;

    /// <summary>Hours in which it must be silent. Default: none.</summary>
    public IReadOnlyList<HourSpan> QuietHours
    {
        get;
        init
        {
            ArgumentNullException.ThrowIfNull(value);
            foreach (var hours in value) Require.Hours(hours, nameof(QuietHours));
            field = value;
        }
    } = [];

    /// <summary>Price of fuel. Unit: currency per litre. Default: 0.</summary>
    public double FuelPricePerLitre { get; init => field = Require.AtLeastZero(value, "currency per litre"); }

    /// <summary>Oil, filters, overhaul. Unit: currency per hour of running. Default: 0.</summary>
    public double MaintenancePerHour { get; init => field = Require.AtLeastZero(value, "currency per hour"); }

    /// <summary>Fuel for an output over some hours, least load counted. Unit: litres.</summary>
    /// <param name="kwh">Energy given. Unit: kWh.</param>
    /// <param name="hours">Hours of running.</param>
    public double LitresFor(double kwh, double hours) => Fuel.Litres(RatedKw, hours, Math.Max(kwh, LeastLoadShare * RatedKw * hours));

    internal bool IsAlwaysQuiet => Enumerable.Range(0, 1440).All(IsQuietAt);

    private static FuelLine Checked(FuelLine fuel)
    {
        ArgumentNullException.ThrowIfNull(fuel);
        var atFullLoad = fuel.IdleLitresPerHourPerKw + fuel.LitresPerKwh;
        return atFullLoad >= LeastLitresPerKwh ? fuel : throw Throw.FuelFromNothing(fuel, atFullLoad, LeastLitresPerKwh);
    }

    internal bool IsQuietAt(int minuteOfDay)
    {
        foreach (var hours in QuietHours)
            if (hours.Contains(minuteOfDay)) return true;
        return false;
    }
}
