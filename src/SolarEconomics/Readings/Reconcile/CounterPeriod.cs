namespace SolarEconomics;

/// <summary>What a counter and a channel of intervals say of the days between two readings of the counter.</summary>
/// <param name="Days">First and last reading of the period, half-open.</param>
/// <param name="CounterKwh">Energy by the counter. Unit: kWh.</param>
/// <param name="LowKwh">Least energy by the intervals, as a reading may be taken at any time of its day, or of the days around it where they are uncertain. Unit: kWh.</param>
/// <param name="HighKwh">Most energy by the intervals. Unit: kWh.</param>
/// <param name="Complete">Whether the intervals cover the whole period; where not, they may hold less than was there.</param>
public sealed record CounterPeriod(DateSpan Days, double CounterKwh, double LowKwh, double HighKwh, bool Complete)
{
    /// <summary>Energy of the counter outside what the intervals leave open: above zero where it counted more. Unit: kWh.</summary>
    public double ApartKwh => CounterKwh > HighKwh ? CounterKwh - HighKwh : CounterKwh < LowKwh ? CounterKwh - LowKwh : 0;
}
