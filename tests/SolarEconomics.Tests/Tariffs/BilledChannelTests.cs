using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>Which channels of a meter a bill counts: several meters, several elements, a controlled load. Invented NEM12 days of 24 kWh an element.</summary>
public sealed class BilledChannelTests
{
    private const string Priced = "[ { \"singleRate\": { \"rates\": [ { \"unitPrice\": \"0.10\" } ] } } ]";

    [Fact]
    public void A_second_element_that_sends_nothing_is_the_controlled_load_where_the_plan_prices_one()
    {
        var answer = Ask(Plan(Priced), Nem12(("M1", "E1"), ("M1", "B1"), ("M1", "E2"))).Answer();
        Assert.Equal([24m, 24m], answer.Lines.Where(l => l.Unit == "kWh").Select(l => l.Quantity));
        Assert.Equal(Math.Round(((24 * 0.30m) + (24 * 0.10m)) * 1.1m, 2), answer.Total!.Value.Amount);
        Assert.StartsWith("\"E2\" is billed as the controlled load", Assert.Single(answer.ReadingNotes), StringComparison.Ordinal);
    }

    [Fact]
    public void A_second_element_with_export_of_its_own_or_without_a_price_is_import()
    {
        Assert.Equal(48m, Ask(Plan(Priced), Nem12(("M1", "E1"), ("M1", "E2"), ("M1", "B2"))).Answer().Lines.First(l => l.Unit == "kWh").Quantity);
        Assert.Equal(48m, Ask(Plan("[]"), Nem12(("M1", "E1"), ("M1", "E2"))).Answer().Lines.Single(l => l.Unit == "kWh").Quantity);
    }

    [Fact]
    public void A_channel_can_be_named_as_the_controlled_load()
    {
        var readings = Nem12(("M1", "E1"), ("M1", "E2"), ("M1", "B2"));
        Assert.Equal([24m, 24m], (Ask(Plan(Priced), readings) with { ControlledLoadChannel = "E2" }).Answer().Lines.Where(l => l is { Unit: "kWh", Rate: > 0 }).Select(l => l.Quantity));
        Assert.Throws<RecordException>(() => (Ask(Plan(Priced), readings) with { ControlledLoadChannel = "E7" }).Answer());
    }

    [Fact]
    public void Two_meters_are_two_bills_until_one_is_chosen()
    {
        var request = Ask(Plan("[]"), Nem12(("M1", "E1"), ("M2", "E1")));
        Assert.Contains("Found readings of 2 meters, \"M1\" and \"M2\"", Assert.Throws<RecordException>(() => request.Answer()).Message, StringComparison.Ordinal);
        Assert.Equal(24m, (request with { Meter = "M2" }).Answer().Lines.Single(l => l.Unit == "kWh").Quantity);
    }

    [Fact]
    public void All_use_and_all_generation_are_billed_where_the_tariff_buys_and_sells_all()
    {
        // A day in which each hour takes 1 kWh, sends 0.5 and makes 2: 2.5 are used. 60 kWh at 0.20 less 48 at 0.10.
        var tariff = TestFiles.Write("""
            { "version": 1, "currency": "EUR", "zone": "UTC", "tariffs": [ { "name": "All", "from": "2024-01-01", "buyAllSellAll": true,
              "import": [ { "name": "use", "perKwh": 0.20 } ], "export": [ { "name": "generation", "perKwh": 0.10 } ] } ] }
            """);
        string Table(string more, string value) => TestFiles.Write($"start,import (kWh),export (kWh){more}\n" + string.Concat(Enumerable.Range(0, 24).Select(h => FormattableString.Invariant($"2024-06-01 {h:00}:00,1,0.5{value}\n"))));
        var answer = Ask(tariff, Table(",generation (kWh)", ",2")).Answer();
        Assert.Equal((60m, 48m, 7.2m), (answer.Lines[0].Quantity, answer.Lines[1].Quantity, answer.Total!.Value.Amount));
        Assert.Contains(answer.ReadingNotes, n => n.StartsWith("All use is billed", StringComparison.Ordinal));
        Assert.Throws<TariffException>(() => Ask(tariff, Table("", "")).Answer());
    }

    [Fact]
    public void Reactive_energy_of_the_meter_counts_for_demand_in_kVA()
    {
        var tariff = TestFiles.Write("""
            { "version": 1, "currency": "AUD", "tariffs": [ { "name": "kVA", "from": "2020-01-01", "import": [ { "name": "use", "perKwh": 0 } ],
              "demand": [ { "name": "top", "perKw": 10, "unit": "kVA", "per": "day", "eachDay": true } ] } ] }
            """);
        // 0.5 kWh and 0.5 kvarh in each half hour: 1 kW and 1 kvar. What the home sends (K1) does not count.
        var metered = Ask(tariff, Nem12(("M1", "E1"), ("M1", "Q1"), ("M1", "K1"))).Answer();
        Assert.Equal(14.14m, metered.Total!.Value.Amount);
        var without = Ask(tariff, Nem12(("M1", "E1"))).Answer();
        Assert.Equal(10m, without.Total!.Value.Amount);
        Assert.Contains(without.ReadingNotes, n => n.StartsWith("No reactive energy is metered", StringComparison.Ordinal));
    }

    private static BillRequest Ask(string plan, string readings) => BillRequest.Load(plan, readings);

    private static string Plan(string controlledLoad) => TestFiles.Write(
        "{ \"data\": { \"planId\": \"INVENTED\", \"electricityContract\": { \"tariffPeriod\": [ { \"singleRate\": { \"rates\": [ { \"unitPrice\": \"0.30\" } ] } } ], "
        + $"\"controlledLoad\": {controlledLoad} }} }} }}");

    private static string Nem12(params (string Meter, string Suffix)[] channels) => TestFiles.Write("100,NEM12,202301010000,A,B\n"
        + string.Concat(channels.Select(c => $"200,{c.Meter},X,{c.Suffix},{c.Suffix},,S1,{(c.Suffix[0] is 'Q' or 'K' ? "kVArh" : "kWh")},30,\n300,20230601,{string.Join(',', Enumerable.Repeat("0.5", 48))},A,,,20230602000000,\n")) + "900\n");
}
