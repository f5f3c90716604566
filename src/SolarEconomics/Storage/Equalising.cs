namespace SolarEconomics;

/// <summary>A charge beyond full that a flooded lead-acid bank gets now and then, so that all its cells come up level. All of it turns into heat and gas.</summary>
/// <param name="EveryDays">Days from the end of one to when the next is due. Unit: days. Range: 1 to 3,650.</param>
/// <param name="Hours">Length at full power. Unit: h. Range: above 0 to 24.</param>
/// <param name="Kw">Power at the battery's terminals. Unit: kW. Range: above 0 to 1,000.</param>
/// <remarks>
/// In a run it is due after <paramref name="EveryDays"/>, waits until an interval begins with a full battery (within a thousandth), and then takes what the control
/// charges beyond full, up to <paramref name="Kw"/>, until <see cref="NeededKwh"/> has gone in. Where the sun is too weak it goes on the next time the battery is
/// full. Common practice, no source: makers state voltages and hours, and chargers count either.
/// </remarks>
public sealed record Equalising(double EveryDays, double Hours, double Kw)
{
    internal const double MostDaysSince = 36_500;

    /// <summary>Days from the end of one to when the next is due. Unit: days.</summary>
    public double EveryDays { get; init => field = Require.Within(value, 1, 3650, "days", nameof(EveryDays)); } = Require.Within(EveryDays, 1, 3650, "days", nameof(EveryDays));

    /// <summary>Length at full power. Unit: h.</summary>
    public double Hours { get; init => field = Require.Within(value, 0.01, 24, "h", nameof(Hours)); } = Require.Within(Hours, 0.01, 24, "h", nameof(Hours));

    /// <summary>Power at the battery's terminals. Unit: kW.</summary>
    public double Kw { get; init => field = Require.Within(value, 1e-6, 1000, "kW", nameof(Kw)); } = Require.Within(Kw, 1e-6, 1000, "kW", nameof(Kw));

    /// <summary>Days since the last one as a run begins. Unit: days. Range: 0 to 36,500. Default: 0, just done.</summary>
    public double DaysSinceAtStart { get; init => field = Require.Within(value, 0, MostDaysSince, "days", nameof(DaysSinceAtStart)); }

    /// <summary>What one of them takes at the battery's terminals. Unit: kWh.</summary>
    /// <remarks>Equation: hours × kW.</remarks>
    public double NeededKwh => Hours * Kw;
}
