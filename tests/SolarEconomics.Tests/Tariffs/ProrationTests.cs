using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>A price that changes within a bill. By hand: 1,000 kWh in March 2024, 15 days at 0.20 and 16 at 0.30; a bill for each stands against one for both.</summary>
public sealed class ProrationTests
{
    private static readonly DateTimeZone Dublin = DateTimeZoneProviders.Tzdb["Europe/Dublin"];
    private static readonly LocalDate First = new(2024, 3, 1);

    [Fact]
    public void A_month_s_total_is_split_by_days_although_one_of_them_has_23_hours()
    {
        var readings = Readings((First, First.PlusMonths(1), 1000));
        var lines = new BillRequest(Changing(EnergySplit.AsMetered), readings, Dublin).Answer().Lines;
        Assert.Equal([483.870968m, 516.129032m], Kwh(Changing(EnergySplit.AsMetered), readings));
        Assert.Equal([31m], lines.Where(l => l.Unit == "day").Select(l => l.Quantity));
        Assert.Contains("spread evenly over its days", Assert.Single(new BillRequest(Changing(EnergySplit.AsMetered), readings, Dublin).Answer().ReadingNotes), StringComparison.Ordinal);
    }

    [Fact]
    public void Daily_totals_stay_on_their_days()
    {
        // 10 kWh a day until the fifteenth, 50 after it.
        var days = Enumerable.Range(0, 31).Select(d => (First.PlusDays(d), First.PlusDays(d + 1), d < 15 ? 10.0 : 50.0)).ToArray();
        Assert.Equal([150m, 800m], Kwh(Changing(EnergySplit.AsMetered), Readings(days)));
    }

    [Fact]
    public void A_sheet_that_splits_by_days_does_so_whatever_was_metered_when()
    {
        var days = Enumerable.Range(0, 31).Select(d => (First.PlusDays(d), First.PlusDays(d + 1), d < 15 ? 10.0 : 50.0)).ToArray();
        Assert.Equal([Math.Round(950m * 15 / 31, 6), Math.Round(950m * 16 / 31, 6)], Kwh(Changing(EnergySplit.ByDays), Readings(days)));
    }

    [Fact]
    public void Split_by_days_no_kWh_is_lost_or_found_and_prices_add_up_to_the_bill() => Gen.Double[0, 3].Array[31 * 24 - 1].Select(Gen.Int[2, 30], Gen.Bool).Sample((kwh, day, blocks) =>
    {
        var grid = new IntervalGrid(First.AtStartOfDayInZone(Dublin).ToInstant(), Duration.FromHours(1), kwh.Length);
        var history = Changing(EnergySplit.ByDays, First.PlusDays(day), blocks);
        var plan = history.On(grid, Dublin);
        var bill = Assert.Single(plan.Bills(kwh, new double[kwh.Length]));
        Assert.Equal(kwh.Sum(), (double)bill.Lines.Where(l => l.Unit == "kWh").Sum(l => l.Quantity), 1e-5);
        if (blocks) return;
        var energy = kwh.Select((k, i) => k * plan.ImportPricePerKwhWithTax(i)).Sum();
        Assert.Equal(energy, (double)bill.Lines.Where(l => l.Unit == "kWh").Sum(l => l.Amount.Amount + l.Tax.Amount), 1e-4);
        Assert.Equal((double)bill.Total.Amount, plan.CostsBeforeRounding(kwh, new double[kwh.Length])[0], 1e-4);
    }, iter: 60);

    [Fact]
    public void The_rule_stands_in_the_file()
    {
        var path = TestFiles.Write("""
            { "version": 1, "currency": "EUR", "tariffs": [
              { "name": "A", "from": "2024-01-01", "import": [ { "name": "energy", "perKwh": 0.20 } ] },
              { "name": "B", "from": "2024-03-16", "energyAtChange": "by days", "import": [ { "name": "energy", "perKwh": 0.30 } ] } ] }
            """);
        Assert.Equal(EnergySplit.ByDays, TariffHistory.Load(path).Latest.EnergyAtChange);
    }

    private static TariffHistory Changing(EnergySplit split, LocalDate? change = null, bool blocks = false)
    {
        Tariff Version(string name, decimal price, LocalDate from)
        {
            var empty = Tariff.Named(name, "EUR", from).SupplyPerDay(1).Taxed(0.10m).Rounded(RoundingMode.HalfUp, RoundingPlace.Nowhere) with { EnergyAtChange = split };
            return blocks
                ? empty.With(new EnergyPart("import", EnergySide.Import, [EnergyRate.InBlocks("energy", new RateBlocks([new RateBlock(5, price), new RateBlock(null, 2 * price)], BlockPeriod.Day))]))
                : empty.Import("day", price, "08:00-20:00").Import("night", price);
        }
        return TariffHistory.Of(Version("A", 0.20m, First), Version("B", 0.30m, change ?? new LocalDate(2024, 3, 16)));
    }

    /// <summary>kWh at each of the two prices.</summary>
    private static decimal[] Kwh(TariffHistory tariffs, Readings readings) =>
        [.. new BillRequest(tariffs, readings, Dublin).Answer().Lines.Where(l => l.Unit == "kWh").GroupBy(l => l.Rate).OrderBy(g => g.Key).Select(g => Math.Round(g.Sum(l => l.Quantity), 6))];

    private static Readings Readings(params (LocalDate From, LocalDate Until, double Kwh)[] totals) => new([new Channel("import", FlowKind.Import,
        [.. totals.Select(t => t.From.AtStartOfDayInZone(Dublin).ToInstant())], [.. totals.Select(t => t.Until.AtStartOfDayInZone(Dublin).ToInstant())],
        [.. totals.Select(t => t.Kwh)], new Quality[totals.Length])], [], []);
}
