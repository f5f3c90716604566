namespace SolarEconomics;

/// <summary>A load that needs an energy every day and may wait for it until a deadline: water heating, a car, a machine in the workshop.</summary>
/// <param name="Name">Its name.</param>
/// <param name="KwhPerDay">Energy needed each day on which it runs. Unit: kWh.</param>
/// <param name="MostKw">The most it takes. Unit: kW.</param>
/// <param name="Between">Hours of the day in which it may run; their end is the deadline. They may run across midnight.</param>
/// <remarks>
/// What it lacks at its deadline, because the grid was out or the plant had too little, is late: it must run as soon as the plant can serve it, at any time of
/// day, for <see cref="LateHours"/> from the deadline. What it lacks then is given up and counts as use that was wanted and not served. The end of a run is a deadline.
/// </remarks>
public sealed record DeferrableLoad(string Name, double KwhPerDay, double MostKw, HourSpan Between)
{
    /// <summary>Energy needed each day on which it runs. Unit: kWh.</summary>
    public double KwhPerDay { get; init => field = Require.AtLeastZero(value, "kWh"); } = Require.AtLeastZero(KwhPerDay, "kWh", nameof(KwhPerDay));

    /// <summary>The most it takes. Unit: kW.</summary>
    public double MostKw { get; init => field = Require.PowerKw(value); } = Require.PowerKw(MostKw, 0, nameof(MostKw));

    /// <summary>Hours of the day in which it may run; their end is the deadline.</summary>
    public HourSpan Between { get; init => field = Require.Hours(value); } = Require.Hours(Between, nameof(Between));

    /// <summary>The most that its hours hold on a day without a change of the clock. Unit: kWh.</summary>
    public double MostKwhPerDay => MostKw * Between.Hours;

    /// <summary>Days of the week on which it starts. Default: empty, all of them.</summary>
    public IReadOnlyList<NodaTime.IsoDayOfWeek> Days { get; init; } = [];

    /// <summary>Hours after the deadline in which what is missing is tried again. Unit: h. Range: 0, given up at the deadline, to 8,784. Default: 24.</summary>
    public double LateHours { get; init => field = Require.Within(value, 0, 8784, "h", nameof(LateHours)); } = 24;
}
