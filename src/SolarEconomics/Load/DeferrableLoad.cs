namespace SolarEconomics;

/// <summary>A load that needs an energy every day and may wait for it until a deadline: water heating, a car, a machine in the workshop.</summary>
/// <param name="Name">Its name.</param>
/// <param name="KwhPerDay">Energy needed each day on which it runs. Unit: kWh.</param>
/// <param name="MostKw">The most it takes. Unit: kW.</param>
/// <param name="Between">Hours of the day in which it may run; their end is the deadline. They may run across midnight.</param>
public sealed record DeferrableLoad(string Name, double KwhPerDay, double MostKw, HourSpan Between)
{
    /// <summary>Energy needed each day on which it runs. Unit: kWh.</summary>
    public double KwhPerDay { get; init => field = Require.AtLeastZero(value, "kWh"); } = Require.AtLeastZero(KwhPerDay, "kWh", nameof(KwhPerDay));

    /// <summary>The most it takes. Unit: kW.</summary>
    public double MostKw { get; init => field = Require.AtLeastZero(value, "kW"); } = Require.AtLeastZero(MostKw, "kW", nameof(MostKw));

    /// <summary>Days of the week on which it starts. Default: empty, all of them.</summary>
    public IReadOnlyList<NodaTime.IsoDayOfWeek> Days { get; init; } = [];
}
