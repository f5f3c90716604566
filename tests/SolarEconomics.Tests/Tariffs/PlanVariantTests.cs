using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>Forms in which real energy plans say the same thing. Invented plans; each bill by hand for June 2024, 720 hours of 1 kWh in and out.</summary>
public sealed class PlanVariantTests
{
    private const string Single = "\"tariffPeriod\": [ { \"startDate\": \"01-01\", \"endDate\": \"12-31\", \"dailySupplyCharge\": \"1.00\", \"singleRate\": { \"rates\": [ { \"unitPrice\": \"0.30\" } ] } } ]";

    [Theory]
    [InlineData("{ \"singleTariff\": { \"amount\": \"0.05\" } }", -36)]
    [InlineData("{ \"singleTariff\": { \"rates\": [ { \"unitPrice\": \"0.05\" } ] } }", -36)]
    [InlineData("{ \"timeVaryingTariffs\": { \"type\": \"PEAK\", \"amount\": \"0.10\", \"timeVariations\": [ { \"days\": [\"SUN\",\"MON\",\"TUE\",\"WED\",\"THU\",\"FRI\",\"SAT\"], \"startTime\": \"10:00:00\", \"endTime\": \"14:00:00\" } ] } }", -12)]
    [InlineData("{ \"singleTariff\": { \"period\": \"P1D\", \"rates\": [ { \"unitPrice\": \"0.10\", \"volume\": 10 }, { \"unitPrice\": \"0.02\" } ] } }", -38.4)]
    [InlineData("{ \"payerType\": \"GOVERNMENT\", \"singleTariff\": { \"rates\": [ { \"unitPrice\": \"0.60\" } ] } }, { \"payerType\": \"RETAILER\", \"singleTariff\": { \"rates\": [ { \"unitPrice\": \"0.05\" } ] } }", -36)]
    public void Feed_in(string entries, double credit) =>
        Assert.Equal((decimal)credit, Bill($"{Single}, \"solarFeedInTariff\": [ {entries} ]").Lines.Where(l => l.Amount.Amount < 0).Sum(l => Math.Round(l.Amount.Amount, 6)));

    [Theory]
    [InlineData("15:00", "21:00")]
    [InlineData("15:00:00", "20:59:59")]
    [InlineData("T15:00", "T20:59")]
    [InlineData("1500", "2100")]
    [InlineData("15:00Z", "21:00Z")]
    public void Times(string start, string end)
    {
        var bill = Bill(Timed("[\"MON\",\"TUE\",\"WED\",\"THU\",\"FRI\",\"SAT\",\"SUN\"]", start, end));
        Assert.Equal(180m, bill.Lines.Single(l => l.Part == "peak").Quantity);
    }

    [Fact]
    public void No_time_zone_is_eastern_standard_time_and_a_local_one_takes_the_clock_of_its_postcodes()
    {
        Assert.Equal("Australia/Brisbane", Plan(Single).Latest.Zone!.Id);
        Assert.Null(Plan($"\"timeZone\": \"LOCAL\", {Single}").Latest.Zone);
        Assert.Equal("Australia/Adelaide", Plan($"\"timeZone\": \"LOCAL\", {Single}", "\"geography\": { \"includedPostcodes\": [\"5000\", \"5700\"] },").PlaceZone!.Id);
        Assert.Null(Plan(Single, "\"geography\": { \"includedPostcodes\": [\"5000\", \"3000\"] },").PlaceZone);
    }

    [Fact]
    public void A_plan_without_the_answer_s_wrapper_is_read_too()
    {
        var path = TestFiles.Write($"{{ \"planId\": \"I\", \"electricityContract\": {{ {Single}, \"fees\": [ {{ \"type\": \"EXIT\", \"amount\": \"20.00\" }} ] }} }}");
        Assert.Equal(["electricityContract.fees[0]"], TariffHistory.Load(path).Unpriced);
    }

    [Fact]
    public void A_controlled_load_is_priced_by_its_own_rate_and_is_import_where_the_plan_has_none()
    {
        var energy = new MeteredEnergy(Ones(), new double[720]) { ControlledLoadKwh = Ones() };
        var apart = Lines(Plan($"{Single}, \"controlledLoad\": [ {{ \"rateBlockUType\": \"singleRate\", \"singleRate\": {{ \"dailySupplyCharge\": \"0.10\", \"rates\": [ {{ \"unitPrice\": \"0.15\" }} ] }} }} ]"), energy);
        Assert.Equal(["supply charge 30.00", "any hour 216.00", "controlled load supply 3.00", "controlled load 108.00"], apart);
        Assert.Equal(["supply charge 30.00", "any hour 432.00"], Lines(Plan(Single), energy));
    }

    [Fact]
    public void A_demand_in_kVA_and_an_unknown_discount_are_listed_by_their_paths()
    {
        var plan = Plan(Single.TrimEnd(']', ' ') + ", { \"startDate\": \"01-01\", \"endDate\": \"12-31\", \"demandCharges\": [ { \"amount\": \"0.40\", \"measureUnit\": \"KVA\", \"startTime\": \"15:00\", \"endTime\": \"21:00\" } ] } ]"
            + ", \"discounts\": [ { \"type\": \"GUARANTEED\", \"methodUType\": \"fixedAmount\", \"fixedAmount\": { \"amount\": \"50.00\" } } ]");
        Assert.Equal(["data.electricityContract.discounts[0].fixedAmount", "data.electricityContract.tariffPeriod[1].demandCharges[0]"], plan.Unpriced);
    }

    [Fact]
    public void Rates_that_name_public_holidays_take_those_of_the_plan_s_state()
    {
        const string rates = "\"timeZone\": \"AEST\", \"tariffPeriod\": [ { \"dailySupplyCharge\": \"1.00\", \"timeOfUseRates\": [ "
            + "{ \"type\": \"PEAK\", \"rates\": [ { \"unitPrice\": \"0.50\" } ], \"timeOfUse\": [ { \"days\": [\"MON\",\"TUE\",\"WED\",\"THU\",\"FRI\"], \"startTime\": \"00:00\", \"endTime\": \"00:00\" } ] }, "
            + "{ \"type\": \"OFF_PEAK\", \"rates\": [ { \"unitPrice\": \"0.20\" } ], \"timeOfUse\": [ { \"days\": [\"SAT\",\"SUN\",\"PUBLIC_HOLIDAYS\"], \"startTime\": \"00:00\", \"endTime\": \"00:00\" } ] } ] } ]";
        // June 2024 has 20 weekdays; the King's birthday on the tenth is a holiday in Victoria.
        var known = Plan(rates, "\"geography\": { \"includedPostcodes\": [\"3000\"] },");
        Assert.Equal(19 * 24m, Bill(known, new MeteredEnergy(Ones(), Ones())).Lines.Single(l => l.Part == "peak").Quantity);
        Assert.Empty(known.Unpriced);
        var unknown = Plan(rates);
        Assert.Equal(20 * 24m, Bill(unknown, new MeteredEnergy(Ones(), Ones())).Lines.Single(l => l.Part == "peak").Quantity);
        Assert.Equal(["data.electricityContract.tariffPeriod[0].timeOfUseRates[1].timeOfUse[0].days"], unknown.Unpriced);
    }

    private static string Timed(string days, string start, string end) =>
        $"\"timeZone\": \"AEST\", \"tariffPeriod\": [ {{ \"startDate\": \"01-01\", \"endDate\": \"12-31\", \"dailySupplyCharge\": \"1.00\", \"timeOfUseRates\": [ "
        + $"{{ \"type\": \"PEAK\", \"rates\": [ {{ \"unitPrice\": \"0.50\" }} ], \"timeOfUse\": [ {{ \"days\": {days}, \"startTime\": \"{start}\", \"endTime\": \"{end}\" }} ] }}, "
        + $"{{ \"type\": \"OFF_PEAK\", \"rates\": [ {{ \"unitPrice\": \"0.20\" }} ], \"timeOfUse\": [ {{ \"days\": {days}, \"startTime\": \"21:00\", \"endTime\": \"15:00\" }} ] }} ] }} ]";

    private static TariffHistory Plan(string contract, string beside = "") =>
        TariffHistory.Load(TestFiles.Write($"{{ \"data\": {{ \"planId\": \"INVENTED\", {beside} \"electricityContract\": {{ {contract} }} }} }}"));

    private static double[] Ones() => [.. Enumerable.Repeat(1.0, 720)];

    private static Bill Bill(string contract) => Bill(Plan(contract), new MeteredEnergy(Ones(), Ones()));

    private static Bill Bill(TariffHistory plan, MeteredEnergy energy)
    {
        var clock = DateTimeZone.ForOffset(Offset.FromHours(10));
        var grid = new IntervalGrid(new LocalDate(2024, 6, 1).AtStartOfDayInZone(clock).ToInstant(), Duration.FromHours(1), 720);
        return Assert.Single(plan.On(grid, clock).Bills(energy));
    }

    private static IEnumerable<string> Lines(TariffHistory plan, MeteredEnergy energy) =>
        Bill(plan, energy).Lines.Select(l => FormattableString.Invariant($"{l.Part} {l.Amount.Amount:0.00}"));
}
