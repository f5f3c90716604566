using System.Globalization;

namespace SolarEconomics;

public sealed partial class Outlook
{
    private static readonly CorrectionKind[] Order =
        [CorrectionKind.Ageing, CorrectionKind.Replacement, CorrectionKind.PricePath, CorrectionKind.TimeValue];

    /// <summary>The bridge of the outlook: what is still open on the day on which the recorded pace, drawn on as a straight line, is paid back.</summary>
    /// <param name="culture">How numbers are written; <see langword="null"/> for the invariant way.</param>
    /// <remarks>It starts where the bridge of the value to date ends: the recorded value after running costs goes on unchanged. Each correction is
    /// the difference of two full recomputations; dates do not subtract, so the bridge is in money at that one day. Source: bridge-1.</remarks>
    public Bridge Bridge(CultureInfo? culture = null)
    {
        culture ??= CultureInfo.InvariantCulture;
        var straight = PathOf(0);
        var isPaidBack = straight.LastingCrossing() is not null;
        var day = straight.LastingCrossing() ?? DayOf(_flows.Horizon);
        var runs = new BridgeRuns(Order.Length, subset => (decimal)PathOf(subset).At(day));
        var words = new OutlookBridgeWords(this, day / 365.25, isPaidBack, culture);
        return BridgeWriter.Write(
            "Outlook: from the recorded pace to a future with age, replacements, prices and time",
            isPaidBack ? "Recorded pace: paid back" : "Recorded pace at the horizon",
            "Position that day",
            runs,
            Order,
            Currency,
            words,
            (subset, _) => Standing(PathOf(subset), culture));
    }

    private CashPath PathOf(uint subset)
    {
        bool On(CorrectionKind kind) => (subset & (1u << Array.IndexOf(Order, kind))) != 0;
        var events = _flows.Events(On(CorrectionKind.Ageing), On(CorrectionKind.Replacement), On(CorrectionKind.PricePath));
        return Path(events, On(CorrectionKind.TimeValue) ? Assumptions.DiscountRate : 0);
    }

    /// <summary>A date; after the horizon, short by so much at its end; or never, where the position no longer rises at the end of life.</summary>
    private string Standing(CashPath path, CultureInfo culture)
    {
        if (path.LastingCrossing() is { } days)
            return $"paid back after {Wording.Years(days / 365.25, culture)}, {Wording.Day(_flows.FirstPurchase.PlusDays((int)Math.Ceiling(days)), culture)}";
        var end = DayOf(_flows.Horizon);
        var isRising = path.AtEnd > path.At(end - 365);
        var short_ = Wording.Whole(Round(-path.AtEnd), culture);
        return isRising ? $"after the horizon, short by {short_} at its end" : $"never, short by {short_} at the end of life";
    }
}
