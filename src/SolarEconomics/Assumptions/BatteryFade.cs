using NodaTime;

namespace SolarEconomics;

/// <summary>A recorded battery that loses capacity by calendar and cycles, so that less is saved through it year by year until it is replaced.</summary>
/// <param name="UsableKwh">What it held when new, usable. Unit: kWh. Range: above 0 to 1e6.</param>
/// <param name="InService">First day of the one in the records.</param>
/// <param name="Ageing">How its capacity falls.</param>
/// <remarks>Cycles before the records' end are taken at the pace of the records. A <see cref="Replacement"/> of the same <see cref="Part"/> makes it new.</remarks>
public sealed record BatteryFade(double UsableKwh, LocalDate InService, BatteryAgeing Ageing)
{
    /// <summary>The part as <see cref="Assumptions.Replacements"/> names it. Default: battery.</summary>
    public string Part { get; init; } = "battery";
}
