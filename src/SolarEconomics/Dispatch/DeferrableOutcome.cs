namespace SolarEconomics;

/// <summary>How a waiting load fared in a run.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Kwh">What it was given in each interval, in time or late. Unit: kWh.</param>
/// <param name="LateKwh">The part of <paramref name="Kwh"/> that came after its deadline. Unit: kWh.</param>
/// <param name="GivenUpKwh">What was given up in each interval because it could not be served in time nor late. Unit: kWh.</param>
public sealed record DeferrableOutcome(string Name, ReadOnlyMemory<double> Kwh, ReadOnlyMemory<double> LateKwh, ReadOnlyMemory<double> GivenUpKwh)
{
    /// <summary>All that it was given by its deadlines. Unit: kWh.</summary>
    public double InTimeKwh => BandSums.Total(Kwh.Span) - BandSums.Total(LateKwh.Span);

    /// <summary>All that it was given after its deadlines. Unit: kWh.</summary>
    public double ServedLateKwh => BandSums.Total(LateKwh.Span);

    /// <summary>All that was given up: it counts as wanted and not served. Unit: kWh.</summary>
    public double MissedKwh => BandSums.Total(GivenUpKwh.Span);
}
