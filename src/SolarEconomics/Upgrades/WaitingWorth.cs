using System.Globalization;

namespace SolarEconomics;

/// <summary>What the right to decide later is worth: an option bought now, bought later whatever comes, and bought later only where it is then worth its price.</summary>
/// <param name="Option">The option.</param>
/// <param name="Years">Years of waiting.</param>
/// <param name="Known">What is known when the waiting is over.</param>
/// <param name="Now">Bought now, draw by draw.</param>
/// <param name="Later">Bought after the waiting, whatever came.</param>
/// <param name="Decided">Bought after the waiting where what is known then says so, else not at all.</param>
/// <param name="BuyShare">Share of draws in which it is bought. Range: 0 to 1.</param>
/// <remarks>All beside doing nothing, nominal, project view, valued at the end of the records. Means of the same draws.</remarks>
public sealed record WaitingWorth(UpgradeOption Option, int Years, IReadOnlyList<string> Known, Chances Now, Chances Later, Chances Decided, double BuyShare) : IFinding
{
    /// <summary>Whether only the first draws were taken and the others are still at work.</summary>
    public bool IsPreview { get; internal init; }

    /// <summary>What deciding again adds over the better of the two fixed plans: buying then whatever comes, and not buying.</summary>
    /// <remarks>Equation: E[decided] − max(E[later], 0).</remarks>
    public Money Flexibility => Decided.InMoney(Decided.Values.Mean - Math.Max(0, Later.Values.Mean));

    /// <summary>What waiting with the right to decide is worth more than the better of buying now and not buying; below 0 where waiting loses.</summary>
    /// <remarks>Equation: E[decided] − max(E[now], 0).</remarks>
    public Money WaitingGain => Decided.InMoney(Decided.Values.Mean - Math.Max(0, Now.Values.Mean));

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        var years = $"{Years.ToString(culture)} {(Years == 1 ? "year" : "years")}";
        var words = (IsPreview ? ChanceWords.Preview(Decided, culture) + "So much " : "") + $"is what the right to decide again in {years} is worth: {Mean(Decided, culture)} in the mean against {Mean(Later, culture)} for buying then whatever comes. "
            + $"It would be bought in {ChanceWords.Percent(BuyShare, culture)} of the draws. Buying now is worth {Mean(Now, culture)}: "
            + (WaitingGain.Amount > 0 ? $"waiting gains {Wording.Whole(WaitingGain, culture)}." : Now.Values.Mean > 0 ? $"waiting costs {Wording.Whole(-WaitingGain, culture)}." : "waiting changes nothing.");
        return new Finding(Wording.Signed(Flexibility, culture), words)
        {
            Tables = [new FindingTable($"{Wording.Capital(Option.Name)} beside doing nothing ({Now.Currency})", ["Plan", "Mean", "Off by chance", "10th percentile", "90th percentile"],
                [Row("buy now", Now, culture), Row($"buy in {years} whatever comes", Later, culture), Row($"decide in {years}", Decided, culture)])],
            Notes =
            [
                Known.Count == 0 ? "Nothing drawn is known by then: the right to decide again adds nothing but chance."
                    : $"Known by then, and taken as fully known: {string.Join(", ", Known)}. A few years tell less than that of a growth rate, so this is an upper estimate.",
                "It is bought where its worth, fitted as a straight line in what is known then to the other half of the draws, is above 0. A better rule could gain more, never less.",
                "The option is taken to be still on offer then; whoever does not buy goes on as today, and does not decide a third time.",
                .. Decided.Notes, ChanceWords.Convergence(Decided, culture),
            ],
            Cautions = [Cautions.Money],
        };
    }

    private static string Mean(Chances chances, CultureInfo culture) => Wording.Signed(chances.InMoney(chances.Values.Mean), culture);

    private static IReadOnlyList<string> Row(string plan, Chances chances, CultureInfo culture) =>
    [
        plan, Mean(chances, culture), "± " + Wording.Exact(chances.InMoney(chances.Values.StandardError), culture), Wording.Signed(chances.Low, culture), Wording.Signed(chances.High, culture),
    ];
}
