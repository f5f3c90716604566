using NodaTime;

namespace SolarEconomics;

/// <summary>One year of an outlook, counted from the first purchase. Money is nominal, in the site's currency.</summary>
/// <param name="Year">0 for the twelve months from the first purchase.</param>
/// <param name="Start">First day of the year.</param>
/// <param name="Investment">Purchases less grants, paid negative.</param>
/// <param name="Savings">Purchases of energy avoided, standby taken off.</param>
/// <param name="FeedIn">Paid for export.</param>
/// <param name="Running">Running costs, paid negative.</param>
/// <param name="Replacement">Replaced parts, paid negative.</param>
/// <param name="Income">Sales of parts, other income and the residual.</param>
/// <param name="CumulativePosition">Sum of all flows to the end of the year.</param>
/// <param name="IsRecorded">Whether the whole year comes from records.</param>
public sealed record OutlookYear(
    int Year,
    LocalDate Start,
    Money Investment,
    Money Savings,
    Money FeedIn,
    Money Running,
    Money Replacement,
    Money Income,
    Money CumulativePosition,
    bool IsRecorded)
{
    /// <summary>Sum of the year's flows.</summary>
    public Money Net => Investment + Savings + FeedIn + Running + Replacement + Income;
}
