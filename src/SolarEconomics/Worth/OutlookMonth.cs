using NodaTime;

namespace SolarEconomics;

/// <summary>One calendar month of an outlook. Money is nominal, in the site's currency.</summary>
/// <param name="Month">The month.</param>
/// <param name="Investment">Purchases less grants, paid negative.</param>
/// <param name="Savings">Purchases of energy avoided, standby taken off.</param>
/// <param name="FeedIn">Paid for export.</param>
/// <param name="Running">Running costs, paid negative.</param>
/// <param name="Replacement">Replaced parts, paid negative.</param>
/// <param name="Income">Sales of parts, other income and the residual.</param>
/// <param name="Position">Sum of all flows to the end of the month.</param>
/// <param name="IsRecorded">Whether the whole month comes from records.</param>
public sealed record OutlookMonth(
    YearMonth Month, Money Investment, Money Savings, Money FeedIn, Money Running, Money Replacement, Money Income, Money Position, bool IsRecorded)
{
    /// <summary>Sum of the month's flows.</summary>
    public Money Net => Investment + Savings + FeedIn + Running + Replacement + Income;
}
