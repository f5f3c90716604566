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

    private static TornadoBar Bar(DeclaredRange range, double atLow, double atHigh, double stands) => new(range, CashSamples.Euros(atLow), CashSamples.Euros(atHigh), stands);
}
