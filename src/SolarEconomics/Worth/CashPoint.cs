using NodaTime;

namespace SolarEconomics;

/// <summary>The cash position at one date: everything paid and received since the first purchase.</summary>
/// <param name="Date">The day; the position is at its start.</param>
/// <param name="Years">Years since the first purchase.</param>
/// <param name="Position">Sum of all flows before the date.</param>
/// <param name="IsRecorded">Whether it comes from records (true) or from the outlook's assumptions (false).</param>
public sealed record CashPoint(LocalDate Date, double Years, Money Position, bool IsRecorded);
