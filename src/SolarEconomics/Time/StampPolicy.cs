namespace SolarEconomics;

/// <summary>What becomes of local stamps that the wall clock shows twice (autumn) or never (spring).</summary>
/// <param name="Repeated">How the hour that stands twice is told apart.</param>
/// <param name="Skipped">What becomes of a row in the hour that the clock skipped.</param>
public sealed record StampPolicy(RepeatedHour Repeated, SkippedHour Skipped)
{
    /// <summary>The default: the repeated hour by the order of the rows; a row in the skipped hour is reported and not counted.</summary>
    public static StampPolicy ByRowOrder { get; } = new(RepeatedHour.ByRowOrder, SkippedHour.Report);
}
