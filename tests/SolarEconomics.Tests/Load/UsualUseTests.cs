using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Use told by the meters, against the demo's hidden truth and by hand.</summary>
public sealed class UsualUseTests(AlderWeirSite demo) : IClassFixture<AlderWeirSite>
{
    [Fact]
    public void The_demo_s_use_comes_out_by_hour_and_month()
    {
        var usual = UsualUse.Of(demo.Site, demo.Readings);
        var truth = new Dictionary<(int Month, int Hour), (double Kwh, double Hours)>();
        for (var i = 0; i < demo.Truth.Count; i++)
        {
            var local = (demo.Truth.Start + (Duration.FromMinutes(30) * i)).InZone(demo.Site.Zone);
            var (kwh, hours) = truth.GetValueOrDefault((local.Month, local.Hour));
            truth[(local.Month, local.Hour)] = (kwh + demo.Truth.Wanted[i], hours + 0.5);
        }
        Assert.All(truth, t => Assert.Equal(t.Value.Kwh / t.Value.Hours, usual.MeanKw(t.Key.Month, t.Key.Hour), 0.15));
        var (told, wanted) = (truth.Sum(t => usual.MeanKw(t.Key.Month, t.Key.Hour)), truth.Sum(t => t.Value.Kwh / t.Value.Hours));
        Assert.Equal(wanted, told, 0.02 * wanted);
    }

    [Fact]
    public void It_is_laid_on_any_grid_and_makes_curtailment_told()
    {
        var usual = UsualUse.Of(demo.Site, demo.Readings);
        var grid = new IntervalGrid(Instant.FromUtc(2025, 7, 1, 0, 0), Duration.FromMinutes(15), 96 * 31);
        var laid = usual.On(grid);
        Assert.Equal(usual.MeanKw(7, 14) / 4, laid[13 * 4], 1e-12); // 13:00 UTC is 14:00 in summer
        var output = PlantOutput.Of(demo.Site, new(2025, 6, 1), Weather.Clear(demo.Site, grid), new() { ExportLimitKw = 2, UseKwh = laid });
        Assert.True(output.IsCurtailmentKnown);
        Assert.True(output.CurtailedKwh > 0);
        Assert.EndsWith(" kWh", usual.Say(CultureInfo.InvariantCulture).Figure, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => usual.MeanKw(13, 0));
    }

    [Fact]
    public void Without_import_on_record_it_cannot_be_told() =>
        Assert.Contains("Found no interval of Alder Weir", Assert.Throws<ArgumentException>(() =>
            UsualUse.Of(demo.Site, new Readings([.. demo.Readings.Channels.Where(c => c.Flow == FlowKind.Generation)], [], []))).Message, StringComparison.Ordinal);
}
