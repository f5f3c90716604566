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
    public void A_demand_in_kVA_counts_reactive_energy()
    {
        var plan = Plan(Single.TrimEnd(']', ' ') + ", { \"startDate\": \"01-01\", \"endDate\": \"12-31\", \"demandCharges\": [ { \"amount\": \"0.40\", \"measureUnit\": \"KVA\", \"startTime\": \"15:00\", \"endTime\": \"21:00\","
            + " \"measurementPeriod\": \"MONTH\", \"chargePeriod\": \"DAY\" } ] } ]");
        Assert.Empty(plan.Unpriced);
        // 3 kW and 4 kvar are 5 kVA, for 30 days.
        var energy = new MeteredEnergy([.. Enumerable.Repeat(3.0, 720)], new double[720]) { ReactiveKvarh = [.. Enumerable.Repeat(4.0, 720)] };
        Assert.Equal((150m, "kVA day", 60m), Of(Bill(plan, energy).Lines.Single(l => l.Part == "demand")));
        Assert.Equal((90m, "kVA day", 36m), Of(Bill(plan, energy with { ReactiveKvarh = [] }).Lines.Single(l => l.Part == "demand")));
        static (decimal, string, decimal) Of(BillLine line) => (Math.Round(line.Quantity, 6), line.Unit, Math.Round(line.Amount.Amount, 6));
    }

    [Theory]
    [InlineData("DAILY", "0.10", 3.00)]
    [InlineData("WEEKLY", "0.70", 3.00)]
    [InlineData("MONTHLY", "5.00", 5.00)]
    [InlineData("ANNUAL", "61.00", 5.00)] // 30 of 366 days
    public void A_membership_fee_is_paid_by_every_home(string term, string amount, double expected)
    {
        var plan = Plan($"{Single}, \"fees\": [ {{ \"type\": \"MEMBERSHIP\", \"term\": \"{term}\", \"amount\": \"{amount}\" }}, {{ \"type\": \"PAPER_BILL\", \"term\": \"MONTHLY\", \"amount\": \"2.00\" }} ]");
        Assert.Equal((decimal)expected, Math.Round(Bill(plan, new MeteredEnergy(Ones(), Ones())).Lines.Single(l => l.Part == "membership").Amount.Amount, 6));
        Assert.Equal(["data.electricityContract.fees[1]"], plan.Unpriced);
    }

    [Fact]
    public void What_nobody_can_price_is_listed_by_its_path()
    {
        var plan = Plan($$"""
            {{Single}}, "intrinsicGreenPower": { "greenPercentage": "0.10" }, "billFrequency": ["P1M"],
            "fees": [ { "type": "EXIT", "term": "FIXED", "amount": "20.00" }, { "type": "CC_PROCESSING", "term": "PERCENT_OF_BILL", "rate": "0.01" }, { "type": "MEMBERSHIP", "term": "BIANNUAL", "amount": "9.00" } ],
            "greenPowerCharges": [ { "displayName": "Green", "scheme": "GREENPOWER", "type": "FIXED_PER_DAY", "tiers": [ { "percentGreen": "1.00", "amount": "0.50" } ] } ],
            "incentives": [ { "displayName": "Gift", "category": "GIFT", "description": "A cup" } ],
            "discounts": [ { "type": "GUARANTEED", "methodUType": "fixedAmount", "fixedAmount": { "amount": "50.00" } },
              { "type": "GUARANTEED", "methodUType": "percentOverThreshold", "percentOverThreshold": { "rate": "0.1", "usageAmount": "1000" } } ]
            """, "\"meteringCharges\": [ { \"displayName\": \"Meter\", \"minimumValue\": \"1.00\", \"period\": \"P1M\" } ],");
        Assert.Equal(
        [
            "data.electricityContract.discounts[0].fixedAmount", "data.electricityContract.discounts[1].percentOverThreshold", "data.electricityContract.fees[0]", "data.electricityContract.fees[1]",
            "data.electricityContract.fees[2]", "data.electricityContract.greenPowerCharges[0].tiers[0]", "data.meteringCharges[0]",
        ], plan.Unpriced);
    }

    [Fact]
    public void Whom_a_plan_is_for_is_known()
    {
        var plan = Plan($"{Single}, \"eligibility\": [ {{ \"type\": \"EXISTING_SOLAR\" }}, {{ \"type\": \"EXISTING_BATTERY\" }}, {{ \"type\": \"EXISTING_CUST\" }} ]").Latest;
        Assert.Equal((TariffNeeds.Solar | TariffNeeds.Battery, true), (plan.Needs, plan.IsClosedToNew));
    }

    [Fact]
    public void A_smart_meter_that_a_plan_asks_for_is_among_its_needs() =>
        Assert.Equal((TariffNeeds.SmartMeter, false), (Plan($"{Single}, \"eligibility\": [ {{ \"type\": \"EXISTING_SMART_METER\" }}, {{ \"type\": \"OTHER\" }} ]").Latest.Needs, Plan(Single).Latest.IsClosedToNew));

    [Theory]
    [InlineData("PAY_ON_TIME", "pay on time")]
    [InlineData("DIRECT_DEBIT", "direct debit")]
    [InlineData("OTHER", "Prompt")]
    public void The_condition_of_a_discount_is_named_by_its_kind_or_its_name(string category, string condition)
    {
        var plan = Plan($"{Single}, \"discounts\": [ {{ \"type\": \"CONDITIONAL\", \"category\": \"{category}\", \"displayName\": \"Prompt\", \"percentOfBill\": {{ \"rate\": \"0.10\" }} }} ]");
        var discount = plan.Latest.Parts.OfType<PercentCharge>().Single();
        Assert.Equal(("Prompt", -0.10m, condition), (discount.Name, discount.Fraction, discount.Condition));
        Assert.Empty(discount.Of);
        Assert.Equal(["data.electricityContract.discounts[0].percentOfBill"], plan.Unpriced);
    }

    [Theory]
    [InlineData("\"singleRate\": { \"rates\": [ { } ] }", "found no field \"unitPrice\", expected it, with an amount such as \"0.31\"")]
    [InlineData("\"singleRate\": { \"period\": \"weekly\", \"rates\": [ { \"unitPrice\": \"0.1\", \"volume\": 9 }, { \"unitPrice\": \"0.2\" } ] }", "found \"weekly\", expected a period such as P1D, P1M, P3M or P1Y")]
    [InlineData("\"startDate\": \"13-01\", \"endDate\": \"12-31\", \"singleRate\": { \"rates\": [ { \"unitPrice\": \"0.1\" } ] }", "found \"13-01\", expected a month and day such as \"07-01\"")]
    [InlineData("\"timeOfUseRates\": [ { \"type\": \"PEAK\", \"rates\": [ { \"unitPrice\": \"0.1\" } ], \"timeOfUse\": [ { \"days\": [\"MOON\"], \"startTime\": \"10:00\", \"endTime\": \"14:00\" } ] } ]", "found day \"MOON\", expected MON to SUN or PUBLIC_HOLIDAYS")]
    [InlineData("\"timeOfUseRates\": [ { \"type\": \"PEAK\", \"rates\": [ { \"unitPrice\": \"0.1\" } ], \"timeOfUse\": [ { \"days\": [\"MON\"], \"startTime\": \"noon\", \"endTime\": \"14:00\" } ] } ]", "found hours \"noon\" to \"14:00\", expected times such as 15:00 and 21:00")]
    [InlineData("\"timeOfUseRates\": [ { \"type\": \"PEAK\", \"rates\": [ { \"unitPrice\": \"0.1\" } ] } ]", "found no field \"timeOfUse\" with anything in it, expected the days and hours of the rate")]
    public void A_mistake_in_a_plan_is_named_with_what_was_expected(string period, string expected) => Assert.Contains(expected,
        Assert.Throws<RecordException>(() => Plan($"\"tariffPeriod\": [ {{ {period} }} ]")).Message, StringComparison.Ordinal);

    [Fact]
    public void A_daily_charge_may_stand_with_the_single_rate() =>
        Assert.Equal(["supply charge 45.00", "any hour 216.00"], Lines(Plan("\"tariffPeriod\": [ { \"singleRate\": { \"dailySupplyCharge\": \"1.50\", \"rates\": [ { \"unitPrice\": \"0.30\" } ] } } ]"), new MeteredEnergy(Ones(), new double[720])));

    [Fact]
    public void A_controlled_load_by_hours_has_a_rate_for_each_and_takes_other_hours_where_only_words_tell_them()
    {
        var energy = new MeteredEnergy(Ones(), new double[720]) { ControlledLoadKwh = Ones() };
        const string days = "\"days\": [\"MON\",\"TUE\",\"WED\",\"THU\",\"FRI\",\"SAT\",\"SUN\"]";
        // 30 nights of 8 hours at 0.10, the other 16 hours at 0.20.
        var timed = Lines(Plan($"{Single}, \"controlledLoad\": [ {{ \"timeOfUseRates\": [ {{ \"type\": \"OFF_PEAK\", \"dailySupplyCharge\": \"0.10\", \"rates\": [ {{ \"unitPrice\": \"0.10\" }} ], \"timeOfUse\": [ {{ {days}, \"startTime\": \"22:00\", \"endTime\": \"06:00\" }} ] }}, "
            + $"{{ \"type\": \"PEAK\", \"rates\": [ {{ \"unitPrice\": \"0.20\" }} ], \"timeOfUse\": [ {{ \"additionalInfo\": \"as the network switches\" }} ] }} ] }} ]"), energy);
        Assert.Equal(["supply charge 30.00", "any hour 216.00", "controlled load supply 3.00", "controlled load, off-peak 24.00", "controlled load, peak 96.00"], timed);
    }

    [Fact]
    public void A_conditional_discount_counts_once_its_condition_is_met()
    {
        var path = TestFiles.Write($"{{ \"data\": {{ \"planId\": \"I\", \"electricityContract\": {{ {Single}, \"discounts\": [ {{ \"type\": \"CONDITIONAL\", \"category\": \"PAY_ON_TIME\", \"displayName\": \"Prompt\", \"methodUType\": \"percentOfUse\", \"percentOfUse\": {{ \"rate\": \"0.10\" }} }} ] }} }} }}");
        var readings = TestFiles.Write("100,NEM12,202301010000,A,B\n200,M1,X,E1,E1,,S1,kWh,30,\n300,20240601," + string.Join(',', Enumerable.Repeat("0.5", 48)) + ",A,,,20240602000000,\n900\n");
        var request = BillRequest.Load(path, readings);
        // One day: 1.00 and 24 kWh at 0.30, with 10 % tax; the discount takes 0.72 off.
        Assert.Equal((9.02m, 1), (request.Answer().Total!.Value.Amount, request.Answer().Unpriced.Count));
        var met = (request with { ConditionsMet = ["pay on time"] }).Answer();
        Assert.Equal((8.23m, 0), (met.Total!.Value.Amount, met.Unpriced.Count));
        Assert.Contains("pay on time", Assert.Throws<TariffException>(() => (request with { ConditionsMet = ["pay in time"] }).Answer()).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"timeZone\": \"LOCAL\", ", "", null, 0)]
    [InlineData("", "\"timeZone\": \"LOCAL\", ", null, 0)]
    [InlineData("\"timeZone\": \"LOCAL\", ", "\"timeZone\": \"AEST\", ", "Australia/Brisbane", 0)]
    public void A_period_s_own_clock_stands_before_the_contract_s(string contract, string period, string? zone, int unpriced)
    {
        var plan = Plan(contract + Single.Replace("{ \"startDate\"", "{ " + period + "\"startDate\"", StringComparison.Ordinal));
        Assert.Equal((zone, unpriced), (plan.Latest.Zone?.Id, plan.Unpriced.Count));
    }

    [Fact]
    public void One_band_of_the_daily_charge_is_the_charge_and_several_are_listed()
    {
        string Banded(string bands) => Single.Replace("\"dailySupplyCharge\": \"1.00\"", $"\"dailySupplyChargeType\": \"BAND\", \"bandedDailySupplyCharges\": [ {bands} ]", StringComparison.Ordinal);
        Assert.Equal(60m, Bill(Banded("{ \"unitPrice\": \"2.00\", \"measureUnit\": \"DAYS\" }")).Lines[0].Amount.Amount);
        var several = Plan(Banded("{ \"unitPrice\": \"2.00\", \"volume\": 4000 }, { \"unitPrice\": \"3.00\" }"));
        Assert.Equal(["data.electricityContract.tariffPeriod[0].bandedDailySupplyCharges[0]", "data.electricityContract.tariffPeriod[0].bandedDailySupplyCharges[1]"], several.Unpriced);
    }

    [Fact]
    public void Charges_of_several_types_stand_on_top_of_each_other()
    {
        const string two = "\"tariffPeriod\": [ { \"type\": \"OTHER\", \"dailySupplyCharge\": \"1.00\", \"singleRate\": { \"rates\": [ { \"unitPrice\": \"0.30\" } ] } }, { \"type\": \"ENVIRONMENTAL\", \"singleRate\": { \"rates\": [ { \"unitPrice\": \"0.02\" } ] } } ]";
        Assert.Equal([30m, 216m, 14.4m], Bill(two).Lines.Select(l => Math.Round(l.Amount.Amount, 6)));
    }

    [Theory]
    [InlineData("P1D", 4, 30 * (4 * 0.10 + 20 * 0.30))]
    [InlineData("P7D", 28, 120 * 0.10 + 600 * 0.30)]
    [InlineData("P1M", 120, 120 * 0.10 + 600 * 0.30)]
    [InlineData("P3M", 364, 120 * 0.10 + 600 * 0.30)] // 30 of 91 days
    [InlineData("P1Y", 1464, 120 * 0.10 + 600 * 0.30)] // 30 of 366
    [InlineData(null, 1464, 120 * 0.10 + 600 * 0.30)] // the form's own rule where none is stated
    public void Blocks_are_stated_for_any_time(string? period, int volume, double expected)
    {
        var stated = period is null ? "" : $"\"period\": \"{period}\", ";
        var bill = Bill($"\"tariffPeriod\": [ {{ \"singleRate\": {{ {stated}\"rates\": [ {{ \"unitPrice\": \"0.10\", \"volume\": {volume} }}, {{ \"unitPrice\": \"0.30\" }} ] }} }} ]");
        Assert.Equal((decimal)expected, Math.Round(bill.Lines.Sum(l => l.Amount.Amount), 5), 5);
    }

    [Fact]
    public void Three_seasons_of_which_one_wraps_the_year_s_end_each_price_their_own_days()
    {
        string Season(string name, string from, string to, string price) =>
            $"{{ \"displayName\": \"{name}\", \"startDate\": \"{from}\", \"endDate\": \"{to}\", \"dailySupplyCharge\": \"1.00\", \"singleRate\": {{ \"rates\": [ {{ \"unitPrice\": \"{price}\" }} ] }} }}";
        var plan = Plan($"\"tariffPeriod\": [ {Season("a", "11-16", "02-29", "0.10")}, {Season("b", "03-01", "06-10", "0.20")}, {Season("c", "06-11", "11-15", "0.30")} ]");
        var bill = Bill(plan, new MeteredEnergy(Ones(), Ones()));
        Assert.Equal([240m, 480m], bill.Lines.Where(l => l.Unit == "kWh").Select(l => l.Quantity));
        Assert.Equal([10m, 20m], bill.Lines.Where(l => l.Unit == "day").Select(l => l.Quantity));
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
