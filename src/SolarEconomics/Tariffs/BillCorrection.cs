using System.Globalization;

namespace SolarEconomics;

/// <summary>What is still owed once estimated reads are replaced: the bills by the meter less those by estimate.</summary>
/// <param name="Estimated">The bills sent on estimated reads, in order.</param>
/// <param name="Read">The bills of the same periods on what the meter says.</param>
public sealed record BillCorrection(IReadOnlyList<Bill> Estimated, IReadOnlyList<Bill> Read) : IFinding
{
    /// <summary>A correction of bills.</summary>
    /// <param name="estimated">The bills sent on estimated reads, in order; at least one.</param>
    /// <param name="read">The bills of the same periods on what the meter says.</param>
    /// <exception cref="ArgumentException">No bill, or other periods.</exception>
    public static BillCorrection Of(IReadOnlyList<Bill> estimated, IReadOnlyList<Bill> read)
    {
        ArgumentNullException.ThrowIfNull(estimated);
        ArgumentNullException.ThrowIfNull(read);
        if (estimated.Count == 0 || !estimated.Select(b => b.Period).SequenceEqual(read.Select(b => b.Period))) throw Throw.BillsOfOtherPeriods();
        return new BillCorrection(estimated, read);
    }

    /// <summary>Still to pay; below 0 where too much was paid.</summary>
    public Money Difference => Sum(Read) - Sum(Estimated);

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        string Figure(Money money) => Wording.Exact(money, culture);
        var isTooMuch = Difference.Amount < 0;
        return new Finding(Figure(isTooMuch ? -Difference : Difference), $"{(isTooMuch ? "to be paid back" : "still to pay")}: the meter makes {Figure(Sum(Read))} of these periods, the estimates {Figure(Sum(Estimated))}.")
        {
            Cautions = [Bill.Caution],
            Tables =
            [
                new FindingTable("Bills on estimated reads and on the meter's", ["period", "estimated", "read", "difference"],
                    [.. Read.Zip(Estimated, (now, before) => (IReadOnlyList<string>)[Wording.Days(now.Period, culture), Figure(before.Total), Figure(now.Total), Figure(now.Total - before.Total)])]),
            ],
        };
    }

    private static Money Sum(IReadOnlyList<Bill> bills) => bills.Skip(1).Aggregate(bills[0].Total, (sum, bill) => sum + bill.Total);
}
