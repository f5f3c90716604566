namespace SolarEconomics.Tests.Tariffs;

/// <summary>Odd but real forms of energy plans, and broken ones: all that is read of each, word for word. Invented plans.</summary>
public sealed class PlanFormTests
{
    private const string Price = "\"rates\": [ { \"unitPrice\": \"0.30\" } ]";
    private const string Flat = $"\"singleRate\": {{ {Price} }}";
    private const string Week = "\"days\": [\"MON\",\"TUE\",\"WED\",\"THU\",\"FRI\",\"SAT\",\"SUN\"]";
    private const string WorkWeek = "\"days\": [\"MON\",\"TUE\",\"WED\",\"THU\",\"FRI\"]";

    [Fact]
    public void Names_wrappers_and_clocks() => Check("plan-forms-outside",
        ("no wrapper, no name", $"{{ \"planId\": \"I\", \"electricityContract\": {{ \"tariffPeriod\": [ {{ {Flat} }} ] }} }}"),
        ("no wrapper and no identifier", $"{{ \"displayName\": \"Bare\", \"electricityContract\": {{ \"tariffPeriod\": [ {{ {Flat} }} ] }} }}"),
        ("a name that is no text", $"{{ \"data\": {{ \"planId\": \"I\", \"displayName\": 7, \"electricityContract\": {{ \"tariffPeriod\": [ {{ {Flat} }} ] }} }} }}"),
        ("a contract that is no object", "{ \"data\": { \"planId\": \"I\", \"electricityContract\": [] } }"),
        ("no contract, no wrapper", "{ \"planId\": \"I\" }"),
        ("no period", Plan("\"tariffPeriod\": []")),
        ("periods that are no list", Plan("\"tariffPeriod\": {}")),
        ("no price", Plan("\"tariffPeriod\": [ { \"dailySupplyCharge\": \"1.00\" } ]")),
        ("clocks of two periods", Plan($"\"timeZone\": \"LOCAL\", \"tariffPeriod\": [ {{ {Flat} }}, {{ \"timeZone\": \"AEST\", \"dailySupplyCharge\": \"1.00\" }} ]")),
        ("whom it is for", Plan($"\"tariffPeriod\": [ {{ {Flat} }} ], \"eligibility\": [ {{ \"type\": \"EXISTING_CUST\" }}, {{ \"type\": \"EXISTING_SOLAR\" }}, {{ }} ]")));

    [Fact]
    public void Seasons_and_supply() => Check("plan-forms-seasons",
        ("ends on 29 February, 29 March and 28 February", Plan($"\"tariffPeriod\": [ {Season("a", "11-16", "02-29", "0.10")}, {Season("b", "03-01", "03-29", "0.20")}, {Season("c", "03-30", "11-15", "0.30")} ]")),
        ("ends on 28 February", Plan($"\"tariffPeriod\": [ {Season("a", "12-01", "02-28", "0.10")}, {Season("b", "03-01", "11-30", "0.20")} ]")),
        ("ends on the second", Plan($"\"tariffPeriod\": [ {Season("a", "03-01", "02-02", "0.10")}, {Season("b", "02-03", "02-28", "0.20")} ]")),
        ("a whole year", Plan($"\"tariffPeriod\": [ {Season("a", "07-01", "06-30", "0.10")} ]")),
        ("one name for two seasons", Plan($"\"tariffPeriod\": [ {Season("same", "01-01", "06-30", "0.10")}, {Season("same", "07-01", "12-31", "0.20")} ]")),
        ("two names for one season", Plan($"\"tariffPeriod\": [ {Season("first", "01-01", "06-30", "0.10")}, {{ \"displayName\": \"second\", \"startDate\": \"01-01\", \"endDate\": \"06-30\", \"dailySupplyCharges\": \"0.40\" }}, {Season("third", "07-01", "12-31", "0.20")} ]")),
        ("no name", Plan($"\"tariffPeriod\": [ {{ \"startDate\": \"01-01\", \"endDate\": \"06-30\", {Flat} }}, {{ \"startDate\": \"07-01\", \"endDate\": \"12-31\", {Flat} }} ]")),
        ("a start alone", Plan($"\"tariffPeriod\": [ {{ \"startDate\": \"01-01\", {Flat} }} ]")),
        ("supply beside the single rate, older word", Plan("\"tariffPeriod\": [ { \"singleRate\": { \"dailySupplyCharges\": \"1.10\", \"rates\": [ { \"unitPrice\": \"0.30\" } ] } } ]")),
        ("one band with a volume", Plan($"\"tariffPeriod\": [ {{ \"bandedDailySupplyCharges\": [ {{ \"unitPrice\": \"2\", \"volume\": 9 }} ], {Flat} }} ]")));

    [Fact]
    public void Rates_hours_and_blocks() => Check("plan-forms-rates",
        ("one name twice in one season", Plan($"\"tariffPeriod\": [ {{ \"timeOfUseRates\": [ {Timed("PEAK", "0.5", WorkWeek, "07:00", "09:00")}, {Timed("PEAK", "0.6", WorkWeek, "09:00", "07:00")}, {Timed("OFF_PEAK", "0.2", "\"days\": [\"SAT\",\"SUN\"]", "00:00", "00:00")} ] }} ]")),
        ("one name in two seasons", Plan($"\"tariffPeriod\": [ {Season("cold", "05-01", "08-31", "0.40")}, {Season("warm", "09-01", "04-30", "0.30")} ]")),
        ("a name of its own, and none", Plan($"\"tariffPeriod\": [ {{ \"timeOfUseRates\": [ {{ \"displayName\": \"Siesta\", {Price}, \"timeOfUse\": [ {{ {Week}, \"startTime\": \"13:00\" }} ] }}, {{ {Price}, \"timeOfUse\": [ {{ {Week}, \"endTime\": \"13:00\" }} ] }} ] }} ]")),
        ("no days at all are every day", Plan($"\"tariffPeriod\": [ {{ \"timeOfUseRates\": [ {{ \"type\": \"ANY\", {Price}, \"timeOfUse\": [ {{ }} ] }} ] }} ]")),
        ("a day named twice", Plan($"\"tariffPeriod\": [ {{ \"timeOfUseRates\": [ {Timed("PEAK", "0.5", "\"days\": [\"MON\",\"MON\",\"TUE\"]", "00:00", "00:00")}, {Timed("OFF_PEAK", "0.2", "\"days\": [\"WED\",\"THU\",\"FRI\",\"SAT\",\"SUN\"]", "00:00", "00:00")} ] }} ]")),
        ("days that are none and hours that are none", Plan($"\"tariffPeriod\": [ {{ \"timeOfUseRates\": [ {Timed("PEAK", "0.5", "\"days\": [\"FUN\"]", "noon", "21:00")} ] }} ]")),
        ("other units than kWh are listed", Plan($"\"tariffPeriod\": [ {{ {Flat} }}, {{ \"singleRate\": {{ \"rates\": [ {{ \"unitPrice\": \"9\", \"measureUnit\": \"KVA\" }} ] }} }} ]")),
        ("the older words for one price", Plan("\"tariffPeriod\": [ { \"singleRate\": { \"generalUnitPrice\": \"0.28\" } } ]")),
        ("a list of prices before the older word", Plan("\"tariffPeriod\": [ { \"singleRate\": { \"generalUnitPrice\": \"0.28\", \"amount\": \"7\", \"rates\": [ { \"unitPrice\": \"0.30\" } ] } } ]")),
        ("blocks for two weeks", Plan(Blocks("P2W"))), ("for a week", Plan(Blocks("P1W"))), ("for two months", Plan(Blocks("P2M"))), ("for two years", Plan(Blocks("P2Y"))), ("for ten days", Plan(Blocks("P10D"))),
        ("for no day", Plan(Blocks("P0D"))), ("for a day without its letter", Plan(Blocks("1D"))), ("for nothing", Plan(Blocks("PD"))), ("for a letter", Plan(Blocks("P1X"))), ("a rate that is no object", Plan($"\"tariffPeriod\": [ {{ \"singleRate\": [ 1 ], \"timeOfUseRates\": [ {Timed("PEAK", "0.5", Week, "00:00", "00:00")} ] }} ]")),
        ("charges of three types on top of each other", Plan($"\"tariffPeriod\": [ {{ \"type\": \"RETAIL\", {Flat} }}, {{ \"type\": \"NETWORK_DELIVERY\", {Flat} }}, {{ {Flat} }} ]")),
        ("hours claimed twice within one type", Plan($"\"tariffPeriod\": [ {{ \"type\": \"RETAIL\", {Flat} }}, {{ \"type\": \"RETAIL\", {Flat} }}, {{ \"type\": \"OTHER\", {Flat} }} ]")));

    [Fact]
    public void Controlled_load_feed_in_demand_and_holidays() => Check("plan-forms-parts",
        ("controlled loads for some dates are passed over", Beside("\"controlledLoad\": [ { \"startDate\": \"01-01\", " + Flat + " }, { \"endDate\": \"06-30\", " + Flat + " }, { \"singleRate\": { \"dailySupplyCharge\": \"0.08\", " + Price + " } }, { " + Flat + " } ]")),
        ("a controlled load without a charge a day", Beside("\"controlledLoad\": [ { \"singleRate\": { \"dailySupplyCharge\": \"0\", " + Price + " } } ]")),
        ("a controlled load that cannot be priced, then one that can", Beside("\"controlledLoad\": [ { \"singleRate\": [] }, { \"timeOfUseRates\": [ { \"type\": \"OFF_PEAK\", " + Price + ", \"timeOfUse\": [ { \"additionalInfo\": \"as switched\" }, { \"startTime\": \"22:00\", \"endTime\": \"06:00\" } ] } ] } ]")),
        ("two rates of a controlled load, one told in words", Beside("\"controlledLoad\": [ { \"timeOfUseRates\": [ { \"type\": \"OFF_PEAK\", " + Price + ", \"timeOfUse\": [ { \"startTime\": \"22:00\", \"endTime\": \"06:00\" } ] }, { \"type\": \"SHOULDER\", " + Price + ", \"timeOfUse\": [ { \"additionalInfo\": \"else\" } ] } ] } ]")),
        ("feed-in: the one without an end stands first", Beside("\"solarFeedInTariff\": [ { \"endDate\": \"2026-01-01\", \"singleTariff\": { \"amount\": \"0.09\" } }, { \"singleTariff\": { \"amount\": \"0.05\" } } ]")),
        ("feed-in: what cannot be priced is passed over", Beside("\"solarFeedInTariff\": [ { \"displayName\": \"words only\" }, { \"singleTariff\": [] }, { \"timeVaryingTariffs\": [ { \"amount\": \"0.20\", \"timeVariations\": [] }, { \"amount\": \"0.21\", \"timeVariations\": 5 } ] }, { \"singleTariff\": { \"amount\": \"0.05\" } } ]")),
        ("feed-in: one for hours beside one for all", Beside("\"solarFeedInTariff\": [ { \"singleTariff\": { \"amount\": \"0.05\" }, \"timeVaryingTariffs\": { \"type\": \"PEAK\", \"amount\": \"0.10\", \"timeVariations\": [ { \"startTime\": \"16:00\", \"endTime\": \"20:00\" } ] } } ]")),
        ("demand of every kind", Plan($"\"tariffPeriod\": [ {{ {Flat}, \"demandCharges\": [ {{ \"amount\": \"0.4\", \"chargePeriod\": \"DAY\", \"measurementPeriod\": \"DAY\" }}, {{ \"displayName\": \"Month\", \"amount\": \"4\", \"chargePeriod\": \"MONTH\", \"measurementPeriod\": \"MONTH\", \"minDemand\": \"2\", \"maxDemand\": \"9\" }}, "
            + "{ \"displayName\": \"Bill\", \"amount\": \"5\", \"measureUnit\": \"KVA\", \"measurementPeriod\": \"DAY\" }, { \"amount\": \"6\", \"measureUnit\": \"DAYS\" } ] } ]")),
        ("holidays as weekends, in Sydney", Held("2000", "[\"SAT\",\"SUN\",\"PUBLIC_HOLIDAYS\"]")), ("holidays as weekends, nobody knows where", Held("x", "[\"SAT\",\"SUN\",\"PUBLIC_HOLIDAYS\"]")),
        ("a rate for seven days beside one that claims the holidays", Plan($"\"timeZone\": \"AEST\", \"tariffPeriod\": [ {{ \"timeOfUseRates\": [ {Timed("PEAK", "0.5", Week, "00:00", "00:00")}, {Timed("HOLIDAY", "0.2", "\"days\": [\"PUBLIC_HOLIDAYS\"]", "00:00", "00:00")} ] }} ]", "\"geography\": { \"includedPostcodes\": [\"2000\"] },")),
        ("holidays claimed twice", Plan($"\"timeZone\": \"AEST\", \"tariffPeriod\": [ {{ \"timeOfUseRates\": [ {Timed("PEAK", "0.5", "\"days\": [\"MON\",\"TUE\",\"WED\",\"THU\",\"FRI\",\"PUBLIC_HOLIDAYS\"]", "00:00", "00:00")}, {Timed("OFF_PEAK", "0.2", "\"days\": [\"SAT\",\"SUN\",\"PUBLIC_HOLIDAYS\"]", "00:00", "00:00")} ] }} ]", "\"geography\": { \"includedPostcodes\": [\"2000\"] },")),
        ("fees and discounts", Beside("\"fees\": [ { \"type\": \"MEMBERSHIP\", \"term\": \"WEEKLY\", \"amount\": \"7\" }, { \"type\": \"MEMBERSHIP\", \"term\": \"FIXED\", \"amount\": \"8\" } ], \"discounts\": [ { \"type\": \"GUARANTEED\", \"percentOfUse\": { \"rate\": \"0.1\" } }, { \"type\": \"CONDITIONAL\", \"category\": \"PAY_ON_TIME\", \"percentOfBill\": { \"rate\": \"0.05\" } }, { \"type\": \"ODD\", \"percentOfBill\": { \"rate\": \"0.5\" } } ]")),
        ("every word for a price that nobody priced", Beside(string.Join(", ", new[] { "unitPrice", "amount", "rate", "dailySupplyCharge", "dailySupplyCharges", "fixedAmount", "minimumValue", "maximumValue", "generalUnitPrice", "volume" }.Select(word => $"\"extra-{word}\": [ 4, {{ \"{word}\": \"1\" }} ]")))),
        ("numbers that are none", Plan($"\"tariffPeriod\": [ {{ \"dailySupplyCharge\": \"one\", \"singleRate\": {{ \"rates\": [ {{ \"unitPrice\": \"0.1\", \"volume\": \"much\" }}, {{ }} ] }} }} ], \"fees\": [ {{ \"type\": \"MEMBERSHIP\", \"term\": \"DAILY\", \"amount\": \"-\" }} ]")));

    private static string Beside(string more) => Plan($"\"tariffPeriod\": [ {{ {Flat} }} ], {more}");

    private static string Held(string postcode, string holidays) => Plan($"\"timeZone\": \"AEST\", \"tariffPeriod\": [ {{ \"timeOfUseRates\": [ {Timed("PEAK", "0.5", WorkWeek, "00:00", "00:00")}, {Timed("OFF_PEAK", "0.2", $"\"days\": {holidays}", "00:00", "00:00")} ] }} ]", $"\"geography\": {{ \"includedPostcodes\": [\"{postcode}\"] }},");

    private static string Blocks(string period) => $"\"tariffPeriod\": [ {{ \"singleRate\": {{ \"period\": \"{period}\", \"rates\": [ {{ \"unitPrice\": \"0.10\", \"volume\": 140 }}, {{ \"unitPrice\": \"0.30\" }} ] }} }} ]";

    private static string Season(string name, string from, string to, string price) => $"{{ \"displayName\": \"{name}\", \"startDate\": \"{from}\", \"endDate\": \"{to}\", \"dailySupplyCharge\": \"1.00\", \"singleRate\": {{ \"rates\": [ {{ \"unitPrice\": \"{price}\" }} ] }} }}";

    private static string Timed(string type, string price, string days, string start, string end) => $"{{ \"type\": \"{type}\", \"rates\": [ {{ \"unitPrice\": \"{price}\" }} ], \"timeOfUse\": [ {{ {days}, \"startTime\": \"{start}\", \"endTime\": \"{end}\" }} ] }}";

    private static string Plan(string contract, string beside = "") => $"{{ \"data\": {{ \"planId\": \"INVENTED\", {beside} \"electricityContract\": {{ {contract} }} }} }}";

    private static void Check(string name, params IReadOnlyList<(string Title, string Plan)> plans) => WholeWords.Check(name, [.. plans.Select(p => (p.Title, (IFinding)new ToldPlan(p.Plan)))]);
}
