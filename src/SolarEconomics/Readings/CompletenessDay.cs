using NodaTime;

namespace SolarEconomics;

/// <summary>How whole one local day of a channel is.</summary>
/// <param name="Day">The day.</param>
/// <param name="Hours">Length of the day on its clock: 24 but for clock changes. Unit: hours.</param>
/// <param name="ReadHours">Time of which there is a value. Unit: hours.</param>
/// <param name="GuessedHours">Part of it that the source estimated or that we filled. Unit: hours.</param>
/// <param name="DoubtfulHours">Part of it that is doubtful. Unit: hours.</param>
/// <param name="Kwh">Energy of the day; an interval across midnight counts by its time on each side. Unit: kWh.</param>
public sealed record CompletenessDay(LocalDate Day, double Hours, double ReadHours, double GuessedHours, double DoubtfulHours, double Kwh)
{
    /// <summary>Whether nothing of it is missing.</summary>
    public bool IsWhole => ReadHours >= Hours - 1e-9;

    /// <summary>Share of the day that was read. Range: 0 to 1; 1 for a day that never happened.</summary>
    public double Share => Hours == 0 ? 1 : ReadHours / Hours;
}
