namespace SolarEconomics.Charts.Tests;

/// <summary>Bridges made up for the tests.</summary>
internal static class BridgeSamples
{
    internal static Bridge ToDate() => Build(
        "Value to date", "Counters × one price", 14_213, "Worth so far", 6_874,
        new Finding("€6,874", "so far, where counters times one price say €14,213. The largest correction: exported kWh were sold for less than they are bought for."),
        (CorrectionKind.MeasurementPoint, "Measurement point", -902, "The oldest counter stands before the inverter, which loses 4 %.", null),
        (CorrectionKind.Destination, "Sold, not used", -3_640, "Exported kWh earned the feed-in rate, not the import price.", null),
        (CorrectionKind.Standby, "Standby", -212, "Inverters and battery took 45 W day and night.", null),
        (CorrectionKind.PriceInForce, "Prices then", -830, "Until March 2024 a kWh cost less than today.", null),
        (CorrectionKind.Tax, "Tax reclaimed", -255, "The workshop reclaims the tax on its share.", null),
        (CorrectionKind.RunningCosts, "Running costs", -1_500, "Repairs, insurance and a new fan.", null));

    internal static Bridge Outlook() => Build(
        "Still open on the straight line's payback date", "Straight line", 0, "Still open", -6_120,
        new Finding("€6,120", "is still open on 1 Mar 2028, the day on which the straight line is paid back. Replacements weigh most."),
        (CorrectionKind.Ageing, "Ageing", -410, "Modules yield 0.6 % less each year.", "14 Jun 2028"),
        (CorrectionKind.Replacement, "Replacement", -5_900, "Inverter in year 12, battery in year 13.", "2 Feb 2036"),
        (CorrectionKind.PricePath, "Prices to come", 980, "Prices grow 3 % a year.", "19 Nov 2033"),
        (CorrectionKind.TimeValue, "Time value", -790, "Money later counts 5 % a year less.", "after the horizon, short by €1,204 at its end"));

    private static Bridge Build(string title, string startLabel, decimal start, string endLabel, decimal end, Finding finding,
        params (CorrectionKind Kind, string Label, decimal Part, string Sentence, string? Standing)[] corrections) => new(
        title, startLabel, Euros(start),
        [.. corrections.Select(c => new Correction(c.Kind, c.Label, Euros(c.Part), Euros(c.Part), Euros(c.Part - 40), Euros(c.Part + 25), c.Sentence, c.Standing))],
        endLabel, Euros(end), finding);

    private static Money Euros(decimal amount) => Money.Nominal(amount, CashSamples.Euro);
}
