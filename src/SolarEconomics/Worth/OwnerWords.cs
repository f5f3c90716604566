using System.Globalization;

namespace SolarEconomics;

/// <summary>The words of the owner's view.</summary>
internal static class OwnerWords
{
    internal static Finding Say(OwnerView owner, CultureInfo culture)
    {
        var outlook = owner.Outlook;
        var rate = Wording.Percent(outlook.Assumptions.DiscountRate, culture);
        var borrowing = owner.WorthOfBorrowing;
        var words = $"net present value in the owner's pocket at the first purchase, at {rate} a year: {Wording.Whole(outlook.Npv, culture)} of the plant itself and " +
            $"{Wording.Signed(borrowing, culture)} of borrowing. {Pocket(owner, culture)}{Payback(owner, culture)}";
        return new Finding(Wording.Whole(owner.Npv, culture), words)
        {
            Tables = [YearTable(owner, culture)],
            Notes = [.. NotesOf(owner, culture)],
            Cautions = [Cautions.Money, "Not credit advice. Early payment may cost a fee that is not stated here."],
        };
    }

    /// <summary>The sentence that an outlook says of its owner's view.</summary>
    internal static string InShort(OwnerView owner, CultureInfo culture) =>
        $"Loans are left out: this is the plant, not its owner's pocket. With them the net present value is {Wording.Whole(owner.Npv, culture)}, {Wording.Signed(owner.WorthOfBorrowing, culture)} by borrowing.";

    private static string Pocket(OwnerView owner, CultureInfo culture) => owner.MostOutOfPocket.Amount == 0
        ? "No money of the owner's own is ever in it."
        : $"At most {Wording.Whole(owner.MostOutOfPocket, culture)} of the owner's own are in it.";

    private static string Payback(OwnerView owner, CultureInfo culture)
    {
        if (owner.MostOutOfPocket.Amount == 0) return "";
        return owner.PaybackYears is { } years
            ? $" They are back for good after {Wording.Years(years, culture)}."
            : $" They are not back within {Wording.Count(owner.Outlook.Assumptions.Years, "year", culture)}.";
    }

    private static IEnumerable<string> NotesOf(OwnerView owner, CultureInfo culture)
    {
        foreach (var taken in owner.Outlook.Assumptions.Loans)
        {
            var table = taken.Loan.Table();
            var last = taken.On.PlusMonths(table.Rows.Count * 12 / taken.Loan.PaymentsPerYear);
            yield return $"{Wording.Capital(taken.Name)}: {Wording.Whole(taken.Loan.Amount, culture)} on {Wording.Day(taken.On, culture)}, {Wording.Whole(table.TotalInterest, culture)} of interest and " +
                $"{Wording.Whole(table.TotalFees, culture)} of fees by {Wording.Day(last, culture)}.";
        }
        if (owner.LedgerUntil is { } until)
        {
            yield return $"The ledger's loan flows count up to {Wording.Day(until, culture)}, the last of them; they do not part interest from principal.";
            if (owner.LeftToLedger.Count > 0) yield return $"What falls due until then is taken from the ledger, not from the terms of {string.Join(", ", owner.LeftToLedger)}.";
            if (owner.Outlook.Assumptions.Loans.Count == 0) yield return "No loan is stated: what is still owed after that day is not known and not in it.";
        }
        yield return "Interest and principal are nominal, as the contract says them; no tax is taken off interest.";
    }

    private static FindingTable YearTable(OwnerView owner, CultureInfo culture) => new(
        $"The owner's flows by year from the first purchase ({owner.Outlook.Currency} of the day)",
        ["Year from", "Plant", "Received", "Interest", "Principal", "Fees", "Paid by the ledger", "Position", "Still owed"],
        [.. owner.YearsAhead.Select(y => (IReadOnlyList<string>)
        [
            Wording.Day(y.Start, culture), Wording.Whole(y.Project, culture), Wording.Whole(y.Received, culture), Wording.Whole(y.Interest, culture), Wording.Whole(y.Principal, culture),
            Wording.Whole(y.Fees, culture), Wording.Whole(y.Recorded, culture), Wording.Whole(y.CumulativePosition, culture), Wording.Whole(y.Owed, culture),
        ])]);
}
