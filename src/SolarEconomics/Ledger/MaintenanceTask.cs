using NodaTime;

namespace SolarEconomics;

/// <summary>Something that has to be done again and again: cleaning, tightening, a test, a filter.</summary>
/// <param name="Task">What, in words.</param>
/// <param name="FirstDue">Day on which it is due next.</param>
/// <param name="EveryMonths">Months between two times. Range: 1 to 600.</param>
/// <param name="Hours">Own hours each time. Range: 0 to 1,000.</param>
/// <param name="Cost">Paid each time at today's prices. Range: 0 or more. Unit: the site's currency.</param>
public sealed record MaintenanceTask(string Task, LocalDate FirstDue, int EveryMonths, double Hours, decimal Cost)
{
    /// <summary>Device it is for; <see langword="null"/> where it is for all.</summary>
    public string? Device { get; init; }
}
