using NodaTime;

namespace SolarEconomics;

/// <summary>One year of the owner's view, counted from the first purchase; year 0 holds loan flows before it too. Money is nominal, in the site's currency.</summary>
/// <param name="Year">0 for the twelve months from the first purchase.</param>
/// <param name="Start">First day of the year.</param>
/// <param name="Project">All flows of the project: <see cref="OutlookYear.Net"/>.</param>
/// <param name="Received">Paid out by lenders.</param>
/// <param name="Interest">Interest of the stated loans, paid negative.</param>
/// <param name="Principal">Principal, balloon and extra payments of the stated loans, paid negative.</param>
/// <param name="Fees">Fees of the stated loans, paid negative.</param>
/// <param name="Recorded">Payments to lenders that the ledger holds, paid negative; it does not part interest from principal.</param>
/// <param name="CumulativePosition">Sum of all flows to the end of the year.</param>
/// <param name="Owed">Still owed on the stated loans at the end of the year.</param>
public sealed record OwnerYear(
    int Year,
    LocalDate Start,
    Money Project,
    Money Received,
    Money Interest,
    Money Principal,
    Money Fees,
    Money Recorded,
    Money CumulativePosition,
    Money Owed)
{
    /// <summary>Sum of the year's flows.</summary>
    public Money Net => Project + Received + Interest + Principal + Fees + Recorded;
}
