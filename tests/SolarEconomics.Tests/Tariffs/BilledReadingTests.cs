using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>What a request takes from the readings: days, clocks, meters, channels, notes. Invented readings; by hand.</summary>
public sealed class BilledReadingTests
{
    private static readonly LocalDate s_first = new(2024, 4, 1);
    private static readonly Tariff s_flat = Tariff.Flat("Plain", "EUR", 0.30m, exportPerKwh: 0.10m, from: new LocalDate(2024, 1, 1));
    private static readonly Tariff s_reactive = s_flat with { Parts = [.. s_flat.Parts, new DemandCharge("top", 1, RateWindow.Always, ChargePeriod.Bill) { Unit = DemandUnit.KilovoltAmpere }] };

    [Fact]
    public void Days_run_from_the_first_reading_of_import_to_the_last_and_can_be_chosen()
    {
        var readings = Read(Hours("second", FlowKind.Import, 30, 30, 1), Hours("first", FlowKind.Import, 6, 48, 1), Hours("export", FlowKind.Export, 0, 90, 1));
        var answer = Ask(readings).Answer();
        Assert.Equal(new DateSpan(s_first, s_first.PlusDays(3)), answer.Days);
        Assert.Equal(new DateSpan(s_first.PlusDays(1), s_first.PlusDays(2)), (Ask(readings) with { From = s_first.PlusDays(1), To = s_first.PlusDays(2) }).Answer().Days);
        var none = Assert.Throws<RecordException>(() => (Ask(readings) with { From = s_first, To = s_first }).Answer());
        Assert.Equal("Found a bill from 2024-04-01 to 2024-04-01, expected the end after the start: the end is the first day that is no longer billed.", none.Message);
    }

    [Fact]
    public void What_is_cut_into_periods_stands_before_stated_periods()
    {
        var ask = Ask(Read(Hours("import", FlowKind.Import, 0, 24 * 40, 1)));
        DateSpan[] stated = [new(s_first, s_first.PlusDays(3))];
        Assert.Equal(2, (ask with { PeriodsBy = BillingPeriods.Months, Periods = stated }).Answer().Bills.Count);
        Assert.Equal([3], (ask with { Periods = stated }).Answer().Bills.Select(b => b.Period.Days));
        Assert.Equal([40], ask.Answer().Bills.Select(b => b.Period.Days));
        Assert.Equal([true, true, false], new[] { ask with { PeriodsBy = BillingPeriods.Months }, ask with { Periods = stated }, ask }.Select(a => a.Answer().HasPeriods));
    }

    [Fact]
    public void The_clocks_are_said_the_tariff_s_before_the_home_s_and_the_meter_s_for_days()
    {
        var import = Hours("import", FlowKind.Import, 0, 48, 1);
        Assert.Equal("Hours follow UTC, billing days follow UTC.", Ask(Read(import)).Answer().Clocks);
        var brisbane = DateTimeZoneProviders.Tzdb["Australia/Brisbane"];
        Assert.Equal("Hours follow Australia/Brisbane, billing days follow UTC.", new BillRequest(TariffHistory.Of(s_flat with { Zone = brisbane }), Read(import), DateTimeZone.Utc).Answer().Clocks);
        var metered = new Channel("import", FlowKind.Import, [.. import.Starts], [.. import.Ends], [.. import.Kwh], new Quality[48]) { Clock = DateTimeZone.ForOffset(Offset.FromHours(10)) };
        Assert.Equal("Hours follow UTC, billing days follow UTC+10.", Ask(Read(metered)).Answer().Clocks);
        Assert.Equal("Hours follow UTC, billing days follow Australia/Brisbane.", (Ask(Read(metered)) with { BillingZone = brisbane }).Answer().Clocks);
    }

    [Fact]
    public void A_total_needs_every_channel_and_an_estimate_fills_what_is_missing()
    {
        // Export of the second day is missing: nothing of it is billed without being an estimate, which takes the first day's hours.
        var ask = Ask(Read(Hours("import", FlowKind.Import, 0, 48, 1), Hours("export", FlowKind.Export, 0, 24, 0.5)));
        Assert.Equal((0.5, null), (ask.Answer().CoveredShare, ask.Answer().Total));
        var estimate = (ask with { EstimateWhereMissing = true }).Answer();
        Assert.Equal((true, (decimal?)((48 * 0.30m) - (24 * 0.10m))), (estimate.IsEstimate, estimate.Total?.Amount));
        var whole = Ask(Read(Hours("import", FlowKind.Import, 0, 48, 1))) with { EstimateWhereMissing = true };
        Assert.False(whole.Answer().IsEstimate);
        // Where no reading touches the days there is no mean to take.
        var beside = (whole with { From = s_first.PlusDays(5), To = s_first.PlusDays(6) }).Answer();
        Assert.Equal((false, 0.0, null), (beside.IsEstimate, beside.CoveredShare, beside.Total));
    }

    [Fact]
    public void Long_readings_and_missing_kinds_are_noted()
    {
        var months = new Channel("letter", FlowKind.Export, [Start(0)], [Start(24 * 30)], [90], new Quality[1]);
        var tariff = s_reactive with { Parts = [.. s_reactive.Parts, new EnergyPart("held back", EnergySide.Curtailed, [EnergyRate.Flat("held back", 0.02m)])] };
        Assert.Equal(
        [
            "\"letter\" has readings of up to 720 hours: each is spread evenly over its days and their hours, so prices by the hour are met on average only.",
            "No reactive energy is metered: power in kVA counts as in kW, a power factor of 1.", "No reading tells what the plant held back: nothing is paid for it here.",
        ], new BillRequest(TariffHistory.Of(tariff), Read(Hours("import", FlowKind.Import, 0, 720, 1), months), DateTimeZone.Utc).Answer().ReadingNotes);
    }

    [Fact]
    public void Reactive_energy_counts_only_where_the_tariff_prices_it_and_only_what_is_taken()
    {
        // 3 kW and 4 kvar are 5 kVA; what is sent does not count, nor that of another meter.
        var readings = Read(Hours("import", FlowKind.Import, 0, 24, 3), Reactive("reactive", 4), Reactive("reactive export", 100));
        Assert.Equal(5, (double)Top(readings).Quantity, 9);
        Assert.Equal(3, (double)Top(Read(Hours("import", FlowKind.Import, 0, 24, 3))).Quantity, 9);
        // Their gaps leave a bill without a total only where they are priced.
        var half = Read(Hours("import", FlowKind.Import, 0, 24, 3), Reactive("reactive", 4, hours: 12));
        Assert.Equal(0.5, Answer(half).CoveredShare);
        Assert.Equal(1.0, Ask(half).Answer().CoveredShare);
        static BillLine Top(Readings readings) => Answer(readings).Lines.Single(l => l.Part == "top");
        static BillAnswer Answer(Readings readings) => new BillRequest(TariffHistory.Of(s_reactive), readings, DateTimeZone.Utc).Answer();
    }

    [Fact]
    public void A_meter_is_chosen_by_its_name_and_must_take_energy()
    {
        var readings = Read(Of("M1", "E1", FlowKind.Import), Of("M2", "E1", FlowKind.Import), Of("M3", "B1", FlowKind.Export));
        Assert.Equal(7.20m, (Ask(readings) with { Meter = "m2" }).Answer().Total!.Value.Amount);
        Assert.Equal("Found readings of 3 meters, \"M1\", \"M2\" and \"M3\", expected one, as each has a bill of its own. Choose one (on the command line: --meter).", Refusal(Ask(readings)));
        Assert.StartsWith("Found meter \"M9\", expected one that the readings hold: ", Refusal(Ask(readings) with { Meter = "M9" }), StringComparison.Ordinal);
        Assert.StartsWith("Found no readings of import in kWh", Refusal(Ask(readings) with { Meter = "M3" }), StringComparison.Ordinal);
        Assert.Equal("Found no readings of import in kWh, expected at least one channel of energy taken from the grid. The readings hold \"B1\" (Export, kWh).", Refusal(Ask(Read(Of("M3", "B1", FlowKind.Export)))));
        Assert.StartsWith("Found no readings of import in kWh", Refusal(Ask(Read(new Channel("empty", FlowKind.Import, [], [], [], [])))), StringComparison.Ordinal);
    }

    /// <summary>24 kWh a channel. Which of them is billed as the controlled load, where the tariff prices one and where it does not.</summary>
    [Theory]
    [InlineData("import, Controlled heater", null, "\"Controlled heater\" is billed as the controlled load: the tariff prices one, and this channel takes energy without sending any. Name another channel where that is wrong.")]
    [InlineData("controlled a, controlled b", null, "")]
    [InlineData("E1, E2", null, "\"E2\" is billed as the controlled load: the tariff prices one, and this channel takes energy without sending any. Name another channel where that is wrong.")]
    [InlineData("E2, E3", null, "")]
    [InlineData("E1, E2, B2", null, "")]
    [InlineData("meter E1, meter E2", "e2", "\"meter E2\" is billed as the controlled load.")]
    [InlineData("meter E1, meter E2", "METER E2", "\"meter E2\" is billed as the controlled load.")]
    public void The_controlled_load(string channels, string? named, string note)
    {
        var tariff = s_flat with { Parts = [.. s_flat.Parts, new EnergyPart("heater", EnergySide.ControlledLoad, [EnergyRate.Flat("heater", 0.10m)])] };
        var readings = Read([.. channels.Split(", ").Select(c => Of("M1", c, c[0] == 'B' ? FlowKind.Export : FlowKind.Import))]);
        var answer = (new BillRequest(TariffHistory.Of(tariff), readings, DateTimeZone.Utc) with { ControlledLoadChannel = named }).Answer();
        Assert.Equal(note.Length == 0 ? [] : [note], answer.ReadingNotes);
        Assert.Equal(note.Length == 0 ? 0 : 24, answer.Lines.Where(l => l.Part == "heater").Sum(l => l.Quantity));
        // Without a price of its own it stays import, unless it is named.
        Assert.Equal(named is null ? [] : [note], (Ask(readings) with { ControlledLoadChannel = named }).Answer().ReadingNotes);
    }

    [Fact]
    public void A_controlled_load_that_no_channel_is_named_after_is_refused() => Assert.StartsWith("Found \"E7\" as the controlled load, expected a channel of import: ",
        Refusal(Ask(Read(Of("M1", "E1", FlowKind.Import))) with { ControlledLoadChannel = "E7" }), StringComparison.Ordinal);

    [Fact]
    public void Loaded_readings_take_the_clock_given_before_the_tariff_s_own()
    {
        var readings = TestFiles.Write("start,import (kWh)\n" + string.Concat(Enumerable.Range(0, 48).Select(h => FormattableString.Invariant($"2024-06-{1 + (h / 24):00} {h % 24:00}:00,1\n"))));
        string Tariff(string zone) => TestFiles.Write($$"""{ "version": 1, "currency": "EUR", {{zone}} "tariffs": [ { "name": "A", "from": "2024-01-01", "import": [ { "name": "use", "perKwh": 0.20 } ] } ] }""");
        Assert.Equal("Europe/Dublin", BillRequest.Load(Tariff("\"zone\": \"Europe/Dublin\","), readings).Zone.Id);
        Assert.Equal("Europe/Paris", BillRequest.Load(Tariff("\"zone\": \"Europe/Dublin\","), readings, DateTimeZoneProviders.Tzdb["Europe/Paris"]).Zone.Id);
        var options = new ReadOptions { Zone = DateTimeZoneProviders.Tzdb["Europe/Paris"] };
        Assert.Equal("Europe/Dublin", BillRequest.Load(Tariff("\"zone\": \"Europe/Dublin\","), readings, options: options).Zone.Id);
    }

    private static string Refusal(BillRequest ask) => Assert.Throws<RecordException>(() => ask.Answer()).Message;

    private static BillRequest Ask(Readings readings) => new(TariffHistory.Of(s_flat), readings, DateTimeZone.Utc);

    private static Readings Read(params Channel[] channels) => new(channels, [], []);

    private static Instant Start(int hour) => s_first.AtMidnight().InUtc().ToInstant() + Duration.FromHours(hour);

    private static Channel Hours(string name, FlowKind flow, int from, int hours, double kwh) => new(name, flow, [.. Enumerable.Range(from, hours).Select(Start)],
        [.. Enumerable.Range(from + 1, hours).Select(Start)], [.. Enumerable.Repeat(kwh, hours)], new Quality[hours]);

    private static Channel Reactive(string name, double kvarh, int hours = 24)
    {
        var energy = Hours(name, FlowKind.Unknown, 0, hours, kvarh);
        return new Channel(name, FlowKind.Unknown, [.. energy.Starts], [.. energy.Ends], [.. energy.Kwh], new Quality[hours]) { Unit = "kVArh" };
    }

    /// <summary>A day of 24 kWh of a meter whose format fixes its clock.</summary>
    private static Channel Of(string meter, string name, FlowKind flow)
    {
        var hours = Hours(name, flow, 0, 24, 1);
        return new Channel(name, flow, [.. hours.Starts], [.. hours.Ends], [.. hours.Kwh], new Quality[24]) { Meter = meter, Clock = DateTimeZone.Utc };
    }
}
