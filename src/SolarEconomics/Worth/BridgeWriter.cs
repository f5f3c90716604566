namespace SolarEconomics;

/// <summary>Turns the recomputations of a bridge into bars: cents by largest remainder, so that the printed bars sum.</summary>
internal static class BridgeWriter
{
    /// <param name="title">Title of the bridge.</param>
    /// <param name="startLabel">Words of the first bar.</param>
    /// <param name="endLabel">Words of the last bar.</param>
    /// <param name="runs">All recomputations.</param>
    /// <param name="order">The printed order; bit i of a subset is <c>order[i]</c>.</param>
    /// <param name="currency">Currency of the values.</param>
    /// <param name="words">The bridge's words.</param>
    /// <param name="standing">What a state stands at, in words.</param>
    internal static Bridge Write(string title, string startLabel, string endLabel, BridgeRuns runs, CorrectionKind[] order,
        Currency currency, IBridgeWords words, Func<uint, decimal, string?> standing)
    {
        var printed = Enumerable.Range(0, order.Length).ToArray();
        var digits = currency.MinorDigits;
        var start = Math.Round(runs.Start, digits, MidpointRounding.AwayFromZero);
        // The rounded start is kept and the parts take up its rounding: start + parts = end holds to the cent.
        var exact = runs.Parts(printed);
        if (exact.Length > 0) exact[0] += runs.Start - start;
        var parts = LargestRemainder.Round(exact, digits);
        var shapley = printed.Select(runs.Shapley).ToArray();
        if (shapley.Length > 0) shapley[0] += runs.Start - start;
        shapley = LargestRemainder.Round(shapley, digits);
        Money In(decimal amount) => Money.Nominal(Math.Round(amount, digits, MidpointRounding.AwayFromZero), currency);
        var corrections = new List<Correction>();
        var subset = 0u;
        for (var i = 0; i < order.Length; i++)
        {
            subset |= 1u << i;
            var (smallest, largest) = runs.Range(i);
            var part = In(parts[i]);
            corrections.Add(new Correction(order[i], words.Label(order[i]), part, In(shapley[i]), In(smallest), In(largest),
                words.Sentence(order[i], part), standing(subset, runs.Value(subset))));
        }
        var end = In(runs.End);
        return new Bridge(title, startLabel, In(start), corrections, endLabel, end, words.Finding(In(start), end, corrections));
    }
}
