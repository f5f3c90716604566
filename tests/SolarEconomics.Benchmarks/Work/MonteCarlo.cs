using System.Globalization;

namespace SolarEconomics.Benchmarks;

/// <summary>Net present values of a plan over many draws, one thread: four numbers common to all years, with and without each year's own weather.</summary>
/// <remarks>The peers draw from generators of their own, so their sums agree to within chance only: five standard errors.</remarks>
internal static class MonteCarlo
{
    private static readonly YearlyPlan s_plan = new()
    {
        Currency = Currency.Of("EUR"), Investment = new NormalDistribution(9_000, 500), YearlyValue = new NormalDistribution(900, 60),
        Growth = new NormalDistribution(0.02, 0.01), Ageing = new NormalDistribution(0.006, 0.001), WeatherSd = 0.06, DiscountRate = 0.05, Years = 25,
    };

    internal static Comparison WithWeather(int draws) => Of(draws, s_plan, "25 years' weather + 4 numbers", draws > 10_000 ? 7 : null, 5);

    internal static Comparison CommonOnly(int draws) => Of(draws, s_plan with { WeatherSd = 0 }, "4 numbers", 8, 4);

    private static Comparison Of(int draws, YearlyPlan plan, string what, double? plainTarget, double tunedTarget)
    {
        var options = new DrawOptions { MostDraws = draws, Seed = 7, Threads = 1 };
        string[] arguments = [draws.ToString(CultureInfo.InvariantCulture), plan.WeatherSd > 0 ? "1" : "0"];
        return new Comparison($"Monte Carlo NPV, {what}, {Words.Count(draws)} draws", "draw", draws,
            new InProcess<Chances>("ours", () => plan.HowSure(options), Checksum),
            [
                new Rival(new PythonPeer("numpy plain", "monte_carlo_plain.py", arguments), plainTarget),
                new Rival(new PythonPeer("numpy tuned", "monte_carlo_tuned.py", arguments), tunedTarget),
            ])
        {
            TargetVectorBits = 512,
            ByChance = 5 * plan.HowSure(options).Values.StandardErrorOfPercentile(0.1) * Math.Sqrt(2),
        };
    }

    private static double[] Checksum(Chances chances) =>
        [chances.Values.Mean, chances.Values.Percentile(0.1), chances.Values.Percentile(0.5), chances.Values.Percentile(0.9)];
}
