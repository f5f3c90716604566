using System.Globalization;

namespace SolarEconomics;

/// <summary>The words of draws.</summary>
internal static class ChanceWords
{
    internal static Finding Say(Chances chances, CultureInfo culture)
    {
        var values = chances.Values;
        var words = (chances.IsPreview ? Preview(chances, culture) + "So much is the " : "") + $"{chances.What}, half way between good and bad luck: one case in ten is below {Wording.Whole(chances.Low, culture)}, one in ten above {Wording.Whole(chances.High, culture)}. " +
            $"In {Percent(chances.ChanceOfGain, culture)} of all cases it does not lose.";
        return new Finding(Wording.Whole(chances.Middle, culture), words)
        {
            Tables = [Table(chances, culture)],
            Notes = [.. chances.Notes, Convergence(chances, culture)],
            Cautions = [Cautions.Money],
        };
    }

    internal static Finding Say(PairedChances pair, CultureInfo culture)
    {
        var chance = pair.ChanceThatFirstWins;
        Money In(double amount) => pair.First.InMoney(amount);
        var words = $"of all cases the first is worth more than the second, by {Wording.Signed(In(pair.Difference.Mean), culture)} in the mean; " +
            $"one case in ten is below {Wording.Signed(In(pair.Difference.Percentile(0.1)), culture)}, one in ten above {Wording.Signed(In(pair.Difference.Percentile(0.9)), culture)}.";
        return new Finding(Percent(chance, culture), words)
        {
            Notes =
            [
                $"{pair.Difference.Count.ToString("#,0", culture)} draws, both with the same weather, prices and ages; " +
                $"the share is off by chance by {Points(pair.Difference.ChanceError(chance), culture)}, the mean by {Wording.Exact(In(pair.Difference.StandardError), culture)}.",
            ],
            Cautions = [Cautions.Money],
        };
    }

    internal static FindingTable Table(Chances chances, CultureInfo culture)
    {
        IReadOnlyList<string> Row(string label, double share) =>
            [label, Wording.Whole(chances.At(share), culture), "± " + Wording.Exact(chances.InMoney(chances.Values.StandardErrorOfPercentile(share)), culture)];
        return new FindingTable($"{Wording.Capital(chances.What)} over all draws ({chances.Currency})", ["Where", "Amount", "Off by chance"],
        [
            Row("10th percentile", 0.1), Row("25th percentile", 0.25), Row("Median", 0.5), Row("75th percentile", 0.75), Row("90th percentile", 0.9),
            ["Mean", Wording.Whole(chances.InMoney(chances.Values.Mean), culture), "± " + Wording.Exact(chances.InMoney(chances.Values.StandardError), culture)],
        ]);
    }

    internal static string Convergence(Chances chances, CultureInfo culture)
    {
        var end = chances.Options.StopAtStandardError is not { } enough ? ""
            : chances.IsPreciseEnough ? $" They ended once the mean was sure to {Wording.Exact(chances.InMoney(enough), culture)}."
            : $" The mean is not yet sure to {Wording.Exact(chances.InMoney(enough), culture)}: take more draws.";
        return $"{chances.Values.Count.ToString("#,0", culture)} draws from seed {chances.Options.Seed.ToString(culture)}; " +
            $"one standard error of the mean is {Wording.Exact(chances.InMoney(chances.Values.StandardError), culture)}.{end}";
    }

    /// <summary>How few draws a first answer rests on, and how far off its mean may be.</summary>
    internal static string Preview(Chances chances, CultureInfo culture) =>
        $"is a preview from {chances.Values.Count.ToString("#,0", culture)} of {chances.Options.MostDraws.ToString("#,0", culture)} draws, "
        + $"with a standard error of the mean of {Wording.Exact(chances.InMoney(chances.Values.StandardError), culture)}. ";

    /// <summary>A share in whole per cent; what is nearly all or nearly none is not called all or none.</summary>
    internal static string Percent(double share, CultureInfo culture) => share switch
    {
        < 1 and >= 0.995 => "over 99 %",
        > 0 and < 0.005 => "under 1 %",
        _ => (share * 100).ToString("0", culture) + " %",
    };

    private static string Points(double share, CultureInfo culture) => (share * 100).ToString("0.0", culture) + " percentage points";
}
