using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests;

public class RecordedFlowsTests(AlderWeirSite demo) : IClassFixture<AlderWeirSite>
{
    private static readonly Instant s_start = Instant.FromUtc(2024, 6, 1, 0, 0);
    private static readonly Site s_site = Site.At("test", 50, 0, "UTC", "EUR");

    [Fact]
    public void The_true_flows_of_the_demo_lie_inside_what_its_records_allow()
    {
        var truth = demo.Truth;
        var total = RecordedFlows.Of(demo.Site, demo.Readings).Total;
        void Inside(double kwh, EnergyRange range) => Assert.True(kwh > range.LowKwh - 1 && kwh < range.HighKwh + 1, $"{kwh} outside {range}");
        Inside(truth.UsedDirectly.Sum() + truth.GenerationToStandby.Sum(), total.ArrayToUse);
        Inside(truth.Stored.Sum(), total.ArrayToBattery);
        Inside(truth.Exported.Sum(), total.ArrayToExport);
        Inside(truth.UsedDirectly.Sum() + truth.GenerationToStandby.Sum() + truth.Stored.Sum(), total.KeptOnSite);
        Inside(truth.Generation.Sum(g => g.Sum()), total.Records.Generation);
        Inside(truth.Imported.Sum(), total.Records.Import);
    }

    [Fact]
    public void The_demo_says_how_much_its_records_leave_open()
    {
        var said = RecordedFlows.Of(demo.Site, demo.Readings).Say(CultureInfo.InvariantCulture);
        Assert.Equal("17,985 to 18,677 kWh", said.Figure);
        Assert.Equal("of 26,824 to 27,232 kWh made was used or stored on site, 1 Mar 2022 to 28 Feb 2025. " +
            "The records allow every value between: 8,554 to 8,839 kWh went to the grid.", said.Words);
        Assert.StartsWith("Weighed in intervals of 30 minutes, all phases as one", said.Notes[0], StringComparison.Ordinal);
        Assert.Equal(["grid to use", "11,175", "no upper end"], Assert.Single(said.Tables).Rows[3]);
    }

    [Fact]
    public void Generation_and_export_by_the_hour_leave_no_doubt_about_the_self_use_of_a_plant_without_a_battery()
    {
        var flows = RecordedFlows.Of(s_site, new Readings([Hours("roof", FlowKind.Generation, 1, 2, 3), Hours("out", FlowKind.Export, 0, 2, 1)], [], []));
        Assert.Equal(EnergyRange.Exactly(3), flows.Total.ArrayToUse);
        Assert.Equal("3 kWh", flows.Say(CultureInfo.InvariantCulture).Figure);
        Assert.EndsWith("The records leave no doubt about it.", flows.Say(CultureInfo.InvariantCulture).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_export_self_use_lies_between_none_and_all_but_use_on_record_caps_it_hour_by_hour()
    {
        // By hand: min(generation, use) is 1 + 1 + 0.5.
        Channel[] channels = [Hours("roof", FlowKind.Generation, 1, 2, 3), Hours("house", FlowKind.Use, 2, 1, 0.5)];
        Assert.Equal(new EnergyRange(0, 6), RecordedFlows.Of(s_site, new Readings(channels[..1], [], [])).Total.ArrayToUse);
        Assert.Equal(new EnergyRange(0, 2.5), RecordedFlows.Of(s_site, new Readings(channels, [], [])).Total.ArrayToUse);
    }

    [Fact]
    public void Hours_in_which_records_disagree_are_widened_and_counted()
    {
        var flows = RecordedFlows.Of(s_site, new Readings([Hours("roof", FlowKind.Generation, 1, 2), Hours("out", FlowKind.Export, 0, 2.1)], [], []));
        Assert.Contains("In 1 intervals the records disagree, by 0.1 kWh at most; each was widened by as much as it needed.", flows.Notes);
        Assert.Equal(1, flows.Total.ArrayToUse.LowKwh, 9);
    }

    [Fact]
    public void A_lifetime_counter_alone_bounds_what_was_made()
    {
        var site = s_site with { Plant = new Plant([new Device("roof", MeasurementPoint.InverterAcOut) { RatedKwp = 3, InService = new LocalDate(2024, 1, 1) }]) };
        var counter = new Counter("roof", MeasurementPoint.InverterAcOut, [new CounterReading(new LocalDate(2024, 12, 31), 2500, 0, null, null, 1)]);
        var total = RecordedFlows.Of(site, new Readings([], [counter], [])).Total;
        // The last reading may have been taken in the morning or at night: a day of 3 kWp stays open.
        Assert.Equal(2500, total.Records.Generation.LowKwh);
        Assert.InRange(total.Records.Generation.HighKwh, 2500, 2520);
        Assert.Equal(new EnergyRange(0, total.Records.Generation.HighKwh), total.ArrayToUse);
    }

    private static Channel Hours(string name, FlowKind flow, params double[] kwh)
    {
        var starts = kwh.Select((_, i) => s_start + Duration.FromHours(i)).ToArray();
        return new Channel(name, flow, starts, [.. starts.Select(s => s + Duration.FromHours(1))], kwh, new Quality[kwh.Length]);
    }
}
