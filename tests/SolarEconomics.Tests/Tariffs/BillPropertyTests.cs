using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

public sealed class BillPropertyTests
{
    private static readonly DateTimeZone Dublin = DateTimeZoneProviders.Tzdb["Europe/Dublin"];
    // Six weeks across the spring change of the clock.
    private static readonly IntervalGrid Grid = new(new LocalDate(2024, 2, 20).AtStartOfDayInZone(Dublin).ToInstant(), Duration.FromMinutes(30), 48 * 42);

    private static readonly Gen<(Tariff Tariff, double[] Import, double[] Export)> Case =
        Gen.Select(RandomTariff.Timed, RandomTariff.Kwh(Grid.Count), RandomTariff.Kwh(Grid.Count));

    [Fact]
    public void Bills_agree_with_the_slow_twin_to_the_cent() => Case.Sample(c =>
    {
        var fast = TariffHistory.Of(c.Tariff).On(Grid, Dublin).Bills(c.Import, c.Export);
        var slow = NaiveBill.Months([c.Tariff], Grid, Dublin, c.Import, c.Export);
        Assert.Equal(slow, fast.Select(b => (b.TotalBeforeTax.Amount, b.Tax.Amount, b.Total.Amount)));
    }, iter: 100);

    [Fact]
    public void Bills_of_two_versions_agree_with_the_slow_twin() => Gen.Select(Case, RandomTariff.Timed, Gen.Int[0, 50]).Sample((c, second, day) =>
    {
        Tariff[] versions = [c.Tariff, second with { From = new LocalDate(2024, 2, 19).PlusDays(day) }];
        var fast = TariffHistory.Of(versions).On(Grid, Dublin).Bills(c.Import, c.Export);
        Assert.Equal(NaiveBill.Months(versions, Grid, Dublin, c.Import, c.Export).Select(b => b.Total), fast.Select(b => b.Total.Amount));
    }, iter: 60);

    [Fact]
    public void Prices_per_interval_times_kwh_are_the_bill_without_its_fixed_charges() => Case.Sample(c =>
    {
        var plan = TariffHistory.Of(c.Tariff.Rounded(RoundingMode.HalfUp, RoundingPlace.Nowhere)).On(Grid, Dublin);
        var energy = plan.Bills(c.Import, c.Export).Sum(b => b.Lines.Where(l => l.Unit == "kWh").Sum(l => l.Amount.Amount + l.Tax.Amount));
        var sum = 0.0;
        for (var i = 0; i < Grid.Count; i++) sum += (c.Import[i] * plan.ImportPricePerKwhWithTax(i)) - (c.Export[i] * plan.ExportPricePerKwh(i));
        Assert.Equal((double)energy, sum, 1e-6);
    }, iter: 60);

    [Fact]
    public void Adding_intervals_adds_bills() => Gen.Select(Case, RandomTariff.Kwh(Grid.Count)).Sample((c, more) =>
    {
        var plan = TariffHistory.Of(c.Tariff.Rounded(RoundingMode.HalfUp, RoundingPlace.Nowhere)).On(Grid, Dublin);
        var none = new double[Grid.Count];
        var both = c.Import.Zip(more, (a, b) => a + b).ToArray();
        var first = Sum(plan.Bills(c.Import, none));
        var second = Sum(plan.Bills(more, none));
        Assert.Equal((double)(first + second - Sum(plan.Bills(none, none))), (double)Sum(plan.Bills(both, none)), 1e-7);
    }, iter: 60);

    [Fact]
    public void Splitting_a_period_where_nothing_changes_changes_nothing_but_rounding() => Gen.Select(Case, Gen.Int[1, 41]).Sample((c, day) =>
    {
        var exact = c.Tariff.Rounded(RoundingMode.HalfUp, RoundingPlace.Nowhere);
        var split = TariffHistory.Of(exact, exact with { From = new LocalDate(2024, 2, 20).PlusDays(day) });
        var whole = TariffHistory.Of(exact).On(Grid, Dublin).Bills(c.Import, c.Export);
        Assert.Equal((double)Sum(whole), (double)Sum(split.On(Grid, Dublin).Bills(c.Import, c.Export)), 1e-7);
    }, iter: 60);

    [Fact]
    public void A_flat_tariff_equals_a_timed_one_with_equal_rates() => Gen.Select(Case, RandomTariff.Price).Sample((c, price) =>
    {
        var timed = c.Tariff.Rounded(RoundingMode.HalfUp, RoundingPlace.Bill);
        var import = timed.EnergyParts(EnergySide.Import).Single();
        var equal = timed with { Parts = [.. timed.Parts.Select(p => ReferenceEquals(p, import) ? import with { Rates = [.. import.Rates.Select(r => r with { PerKwh = price })] } : p)] };
        var flat = timed with { Parts = [.. timed.Parts.Select(p => ReferenceEquals(p, import) ? new EnergyPart("import", EnergySide.Import, [EnergyRate.Flat("flat", price)]) : p)] };
        Assert.Equal(TariffHistory.Of(flat).On(Grid, Dublin).Bills(c.Import, c.Export).Select(b => b.Total),
            TariffHistory.Of(equal).On(Grid, Dublin).Bills(c.Import, c.Export).Select(b => b.Total));
    }, iter: 60);

    [Fact]
    public void Net_metering_never_bills_below_its_minimum() => Case.Sample(c =>
    {
        var import = c.Tariff.EnergyParts(EnergySide.Import).Single();
        var net = Tariff.Named("Net", "EUR", new LocalDate(2020, 1, 1)).With(new NetMetering("import", import.Rates) { }) with { Seasons = c.Tariff.Seasons, Holidays = c.Tariff.Holidays };
        var bills = TariffHistory.Of(net.With(new MinimumBill("minimum", 12, ChargePeriod.Month))).On(Grid, Dublin).Bills(c.Import, c.Export);
        // Ten days of February's 29 and 31 of March's 31 and less: the minimum goes by days.
        Assert.All(bills, b => Assert.True(b.Total.Amount >= Math.Round(12m * b.Period.Days / CalendarSystem.Iso.GetDaysInMonth(b.Period.Start.Year, b.Period.Start.Month), 2)));
    }, iter: 60);

    [Fact]
    public void Blocks_at_one_price_are_no_blocks() => Gen.Select(Case, Gen.Int[1, 500], Gen.Enum<BlockPeriod>()).Sample((c, end, per) =>
    {
        var blocks = new RateBlocks([new RateBlock(end, 0.25m), new RateBlock(null, 0.25m)], per);
        var flat = Tariff.Flat("Flat", "EUR", 0.25m, from: new LocalDate(2020, 1, 1)).Rounded(RoundingMode.HalfUp, RoundingPlace.Bill);
        var blocked = flat with { Parts = [new EnergyPart("import", EnergySide.Import, [EnergyRate.InBlocks("import", blocks)])] };
        var none = new double[Grid.Count];
        Assert.Equal(TariffHistory.Of(flat).On(Grid, Dublin).Bills(c.Import, none).Select(b => b.Total),
            TariffHistory.Of(blocked).On(Grid, Dublin).Bills(c.Import, none).Select(b => b.Total));
    }, iter: 60);

    private static decimal Sum(IReadOnlyList<Bill> bills) => bills.Sum(b => b.Total.Amount);
}
