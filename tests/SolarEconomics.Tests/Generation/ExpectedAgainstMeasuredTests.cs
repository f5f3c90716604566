using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests.GenerationRoom;

/// <summary>The demo's failures against its hidden truth. The records show neither what was lost nor why.</summary>
public sealed class ExpectedAgainstMeasuredTests(AlderWeirSite demo) : IClassFixture<AlderWeirSite>
{
    private static readonly DateSpan Isolator = new(new(2024, 5, 3), new(2024, 5, 14));
    private static readonly DateSpan Repair = new(new(2023, 6, 5), new(2023, 6, 27));

    private ExpectedAgainstMeasured At(string device, LossOptions? options = null) => ExpectedAgainstMeasured.Of(demo.Site, demo.Readings, device, options ?? Priced);

    private LossOptions Priced => new() { Tariffs = demo.Tariffs, Ledger = demo.Ledger };

    [Fact]
    public void Eleven_days_with_an_open_isolator_are_found_as_one_string_of_two()
    {
        var found = Assert.Single(At("south roof").Events);
        Assert.Equal((ShortfallKind.PartialString, Isolator), (found.Shortfall.Kind, found.Shortfall.Days));
        Assert.Contains("1 of 2 strings", found.Shortfall.Why, StringComparison.Ordinal);
        AssertNearTruth(found.Shortfall.LostKwh, found.UncertaintyKwh, TrueLoss(0, Isolator));
        Assert.Equal(LogKind.Cleaning, Assert.Single(found.Log).Kind);
    }

    [Fact]
    public void The_days_between_two_inverters_are_an_outage_though_the_record_is_empty()
    {
        var found = Assert.Single(At("west roof").Events);
        Assert.Equal((ShortfallKind.Outage, Repair), (found.Shortfall.Kind, found.Shortfall.Days));
        AssertNearTruth(found.Shortfall.LostKwh, found.UncertaintyKwh, TrueLoss(1, Repair));
        Assert.Equal("no device was at work: one had gone and the next had not come", found.Shortfall.Why);
        // The receipt of the new inverter and its fitting stand beside; the refused claim moved no money.
        Assert.Equal(found.Receipts.Sum(r => -r.CashFlow.Amount), found.Paid!.Value.Amount);
        Assert.Equal(found.Value!.Value + found.Paid!.Value, found.Cost!.Value);
        Assert.Equal(found, At("west roof first inverter").Events.Single() with { Days = found.Days, Receipts = found.Receipts, Log = found.Log });
    }

    [Fact]
    public void Where_nothing_failed_nothing_is_found() => Assert.Empty(At("ground array").Events);

    [Fact]
    public void A_spare_on_the_shelf_saves_what_the_later_days_lost()
    {
        var found = At("west roof").Events.Single();
        Assert.Equal(found.Shortfall.LostKwh, found.SavedIfMendedAfter(0).Kwh, 1e-6);
        Assert.Equal(0, found.SavedIfMendedAfter(22).Kwh);
        AssertNearTruth(found.SavedIfMendedAfter(3).Kwh, found.UncertaintyKwh, TrueLoss(1, new(Repair.Start.PlusDays(3), Repair.End)));
        Assert.True(found.SavedIfMendedAfter(3).Value!.Value.Amount < found.Value!.Value.Amount);
    }

    [Fact]
    public void Worth_lies_between_all_exported_and_all_used()
    {
        foreach (var found in At("south roof").Events.Concat(At("west roof").Events))
        {
            Assert.True(found.Range!.Value.Contains(found.Value!.Value));
            Assert.Equal(found.Shortfall.LostKwh, found.Days.Sum(d => d.Kwh), 1e-6);
        }
        Assert.Null(At("south roof", new LossOptions()).Events[0].Value);
        Assert.Null(At("south roof", new LossOptions()).Events[0].Cost);
    }

    [Fact]
    public void It_says_what_was_lost_on_what_it_stands_and_the_cautions()
    {
        var said = At("south roof").Say(CultureInfo.InvariantCulture);
        Assert.EndsWith(" kWh", said.Figure, StringComparison.Ordinal);
        Assert.Contains("3 May 2024 to 13 May 2024, part of the strings", said.Words, StringComparison.Ordinal);
        Assert.Contains(said.Notes, n => n.StartsWith("Expected from: west roof, fitted on", StringComparison.Ordinal));
        Assert.Contains(said.Notes, n => n.Contains("Logged on 3 May 2024: cleaning", StringComparison.Ordinal));
        Assert.NotEmpty(said.Cautions);
        Assert.Equal("nothing", At("ground array").Say(CultureInfo.InvariantCulture).Figure);
    }

    [Fact]
    public void A_place_without_sister_or_weather_cannot_be_judged_and_a_wrong_name_is_named()
    {
        var alone = new Readings([.. demo.Readings.Channels.Where(c => c.Device is "south roof")], [], []);
        Assert.Contains("pass LossOptions.Weather", Assert.Throws<ArgumentException>(() => ExpectedAgainstMeasured.Of(demo.Site with { Plant = new Plant([demo.Site.Plant.Find("south roof")!]) }, alone, "south roof")).Message, StringComparison.Ordinal);
        Assert.Contains("south roof", Assert.Throws<UnknownNameException>(() => At("south rof")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Weather_can_stand_in_for_a_sister()
    {
        // Invented: clear sky through clouds drawn by seed; the plant's own output through the same clouds, half of it missing for nine days.
        var site = Site.At("Test", 53.2, -9.1, "Europe/Dublin", "EUR");
        var grid = new IntervalGrid(Instant.FromUtc(2023, 1, 1, 0, 0), Duration.FromHours(1), 8760);
        var weather = GenerationModelTests.MadeUp(grid, seed: 5, split: false);
        var array = new ModuleArray("a", new ModuleType("m", 400), 8, 2, new Plane(30, 180));
        var inverter = new InverterType("i", 6000);
        var plant = new Plant([new Device("roof", MeasurementPoint.InverterAcOut) { Inverter = inverter, InService = new(2023, 1, 1) }]).With(new Placement(array, "roof") { From = new(2023, 1, 1) });
        var acW = new GenerationModel(inverter, array).Run(site, weather).AcW;
        var (starts, ends, kwh) = (new Instant[8760], new Instant[8760], new double[8760]);
        var span = new DateSpan(new(2023, 7, 10), new(2023, 7, 19));
        var lost = 0.0;
        for (var i = 0; i < 8760; i++)
        {
            (starts[i], ends[i], kwh[i]) = (grid.StartOf(i), grid.StartOf(i + 1), acW[i] * 0.93 / 1000);
            if (!span.Contains(starts[i].InZone(site.Zone).Date)) continue;
            kwh[i] /= 2;
            lost += kwh[i];
        }
        var channel = new Channel("generation roof", FlowKind.Generation, starts, ends, kwh, new Quality[8760]) { Device = "roof" };
        var found = Assert.Single(ExpectedAgainstMeasured.Of(site with { Plant = plant }, new Readings([channel], [], []), "roof", new LossOptions { Weather = weather }).Events);
        Assert.Equal((ShortfallKind.PartialString, span), (found.Shortfall.Kind, found.Shortfall.Days));
        Assert.Equal(lost, found.Shortfall.LostKwh, 0.01 * lost);
    }

    private double TrueLoss(int array, DateSpan span)
    {
        var sum = 0.0;
        for (var i = 0; i < demo.Truth.Count; i++)
            if (span.Contains((demo.Truth.Start + (Duration.FromMinutes(30) * i)).InZone(demo.Site.Zone).Date)) sum += demo.Truth.Failed[array][i];
        return sum;
    }

    /// <summary>Truth is before throttling: what the export limit would have held back of it, and no record can show, is left room below.</summary>
    private static void AssertNearTruth(double foundKwh, double uncertaintyKwh, double trueKwh) =>
        Assert.InRange(foundKwh, (0.95 * trueKwh) - uncertaintyKwh, trueKwh + uncertaintyKwh);
}
