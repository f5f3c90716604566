using NodaTime;

namespace AlderWeir;

/// <summary>What the plant's own electronics draw at the board, all day and night, while they are in service.</summary>
internal static class Standby
{
    internal const double SouthW = 8;
    internal const double WestW = 9;
    internal const double GroundW = 11;
    internal const double BatteryW = 17;

    internal static double W(LocalDate day)
    {
        var watts = day >= Timeline.SouthOn ? SouthW : 0;
        if (day >= Timeline.WestOn && (day < Timeline.WestFailed || day >= Timeline.WestReplaced)) watts += WestW;
        if (day >= Timeline.GroundOn) watts += GroundW;
        if (day >= Timeline.BatteryOn) watts += BatteryW;
        return watts;
    }
}
