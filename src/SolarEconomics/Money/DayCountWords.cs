namespace SolarEconomics;

/// <summary>Day counts in words, for results that hang on one.</summary>
internal static class DayCountWords
{
    internal static string Say(DayCount count) => count switch
    {
        DayCount.Actual365 => "actual days over 365",
        DayCount.Actual360 => "actual days over 360",
        DayCount.ActualActual => "actual days over the length of their calendar year",
        DayCount.Thirty360European => "months of 30 days over 360 (European)",
        DayCount.Thirty360Us => "months of 30 days over 360 (United States)",
        _ => throw new ArgumentOutOfRangeException(nameof(count), count, "Expected a named day count."),
    };
}
