using NodaTime;

namespace SolarEconomics.Tests.Demo;

public class DemoTariffTests
{
    private static readonly TariffHistory History = TariffHistory.Load(Path.Combine(DemoScenario.Folder, "tariffs.json"));

    [Fact]
    public void Two_versions_follow_each_other() =>
        Assert.Equal([new LocalDate(2022, 1, 1), new LocalDate(2024, 3, 1)], History.Versions.Select(v => v.From));

    [Fact]
    public void Both_are_taxed_at_9_percent_and_pay_for_export() => Assert.All(History.Versions, v =>
    {
        Assert.Equal(0.09m, v.Tax);
        Assert.Single(v.EnergyParts(EnergySide.Export));
    });
}
