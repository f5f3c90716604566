namespace SolarEconomics.Charts.Tests;

/// <summary>Draws and what-ifs made up for the tests.</summary>
internal static class ChanceSamples
{
    /// <summary>A plan that gains in most cases.</summary>
    internal static Chances Plan() => new YearlyPlan
    {
        Currency = CashSamples.Euro, Investment = new NormalDistribution(11_200, 600), YearlyValue = new NormalDistribution(900, 90),
        Growth = new NormalDistribution(0.02, 0.01), Ageing = new TriangularDistribution(0.003, 0.005, 0.012), WeatherSd = 0.06, DiscountRate = 0.05,
    }.HowSure(new DrawOptions { MostDraws = 20_000, Seed = 4 });

    /// <summary>Inputs that pull to either side, one of them short, one that gains at both ends.</summary>
    internal static Tornado Tornado() => new("net present value", CashSamples.Euros(1_840),
    [
        Bar(OutlookInput.PriceGrowth.Between(0, 0.05), -1_310, 4_760, 0.03),
        Bar(OutlookInput.DiscountRate.Between(0.02, 0.07), 4_420, 120, 0.05),
        Bar(OutlookInput.YieldFactor.Between(0.9, 1.05), 310, 2_600, 1),
        Bar(OutlookInput.RunningCostsPerYear.Between(150, 450), 2_900, 790, 300),
        Bar(OutlookInput.AgeingPerYear.Between(0.003, 0.01), 2_010, 1_480, 0.006),
        Bar(OutlookInput.ResidualValue.Between(-500, 500), 1_690, 1_990, 0),
    ]);

    /// <summary>Running costs that a discount rate leaves room for: a line that falls, gains below it, and a last step at which no costs are low enough.</summary>
    internal static BreakEvenLine CostsAgainstRate() => new("net present value", OutlookInput.DiscountRate.Between(0, 0.1), OutlookInput.RunningCostsPerYear.Between(0, 600),
        [(0, 512), (0.02, 402), (0.04, 286), (0.06, 166), (0.08, 42)], 6, CashSamples.Euro)
    {
        AlwaysBelow = [0.1], Edges = [(0.087, 0)], GainsAbove = [false, false, false, false, false], AsItStands = (0.03, 150),
    };

    /// <summary>Two values at two of the steps, so that no line and no side is drawn there; what stands now lies at the edge.</summary>
    internal static BreakEvenLine SeveralValues() => new("worth of <b>twice</b> the modules & a loan", OutlookInput.PriceGrowth.Between(-0.05, 0.05), OutlookInput.YieldFactor.Between(0.5, 1.5),
        [(-0.05, 1.31), (-0.025, 1.12), (0, 0.96), (0.025, 0.71), (0.025, 1.37), (0.05, 0.62), (0.05, 1.44)], 5, Currency.Of("CHF"))
    {
        GainsAbove = [true, true, true, true, false, true, false], AsItStands = (0.05, 1.49),
    };

    /// <summary>An amount that is above 0 everywhere.</summary>
    internal static BreakEvenLine NeverZero() => new("cash position at the end", OutlookInput.DiscountRate.Between(0, 0.1), OutlookInput.ResidualValue.Between(-500, 500), [], 3, CashSamples.Euro)
    {
        AlwaysAbove = [0, 0.05, 0.1], AsItStands = (0.08, 120),
    };

    private static TornadoBar Bar(DeclaredRange range, double atLow, double atHigh, double stands) => new(range, CashSamples.Euros(atLow), CashSamples.Euros(atHigh), stands);
}
