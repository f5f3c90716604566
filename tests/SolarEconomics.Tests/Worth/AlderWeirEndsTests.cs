namespace SolarEconomics.Tests;

/// <summary>The demo's ends are flows on all four rungs, with a battery and with gaps that cross the months.</summary>
public class AlderWeirEndsTests(AlderWeirSite demo) : IClassFixture<AlderWeirSite>
{
    private SiteRecords Records => demo.Worth.Records;

    [Fact]
    public void Both_ends_of_every_rung_are_flows_that_balance_and_are_worth_what_the_range_says()
    {
        Assert.Equal([true, true, true, true], demo.Worth.Ladder.Select(s => s.IsAttained));
        foreach (var step in demo.Worth.Ladder)
        {
            Assert.Equal((step.Range.Low, step.Range.High), (step.LowFlows!.Value, step.HighFlows!.Value));
            Assert.Equal((0, 0), (Math.Round(step.LowFlows.MissedKwh, 6), Math.Round(step.HighFlows!.MissedKwh, 6)));
            LadderEndsTests.CheckBalances(step.LowFlows);
            LadderEndsTests.CheckBalances(step.HighFlows);
        }
    }

    [Theory]
    [InlineData(EvidenceRung.MonthlyTotals)]
    [InlineData(EvidenceRung.IntervalGeneration)]
    [InlineData(EvidenceRung.IntervalFlows)]
    public void The_flows_at_the_ends_keep_to_every_month_that_was_metered(EvidenceRung rung)
    {
        var step = demo.Worth.Ladder.Single(s => s.Rung == rung);
        foreach (var flows in (EndFlows[])[step.LowFlows!, step.HighFlows!])
        {
            SameMonths(Records.Export!, flows.ExportKwh);
            SameMonths(Records.Import!, flows.ImportKwh);
            SameMonths(Records.Charge!, flows.ChargeKwh);
            SameMonths(Records.Discharge!, flows.DischargeKwh);
        }
    }

    private void SameMonths(GridSeries recorded, IReadOnlyList<double> flows)
    {
        foreach (var month in Enumerable.Range(0, flows.Count).Where(i => recorded.Known[i]).GroupBy(i => demo.Worth.Prices.MonthOf[i]))
            Assert.Equal(month.Sum(i => recorded.Kwh[i]), month.Sum(i => flows[i]), 1e-6);
    }

    [Fact]
    public void On_the_highest_rung_what_was_read_is_what_flows()
    {
        var flows = demo.Worth.Ladder[^1].LowFlows!;
        Assert.All(Enumerable.Range(0, flows.ExportKwh.Count).Where(i => Records.Export!.Known[i]), i => Assert.Equal(Records.Export!.Kwh[i], flows.ExportKwh[i], 1e-9));
        Assert.All(Enumerable.Range(0, flows.ChargeKwh.Count).Where(i => Records.Charge!.Known[i]), i => Assert.Equal(Records.Charge!.Kwh[i], flows.ChargeKwh[i], 1e-9));
    }
}
