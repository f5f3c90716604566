using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>Slow twins, in decimals and interval by interval, of parts whose lines are summed another way.</summary>
public sealed class RareTwinTests
{
    private static readonly DateTimeZone Dublin = DateTimeZoneProviders.Tzdb["Europe/Dublin"];
    private static readonly LocalDate Start = new(2024, 3, 25);
    // Two weeks across the spring change of the clock.
    private static readonly IntervalGrid Grid = new(Start.AtStartOfDayInZone(Dublin).ToInstant(), Duration.FromMinutes(30), (14 * 48) - 2);

    [Fact]
    public void A_price_series_agrees_with_its_twin() =>
        Gen.Select(RandomTariff.Kwh(Grid.Count), Gen.Int[-200, 900].Array[Grid.Count / 2], Gen.Int[0, 300], Gen.Int[300, 600]).Sample((import, prices, floor, cap) =>
        {
            var series = PriceSeries.Of("random", [.. prices.Select((p, h) => (Grid.Start + Duration.FromHours(h), p / 1000.0))]);
            var bill = Bill(OneBill.Empty("EUR").With(new SeriesPrice("spot", EnergySide.Import, series) { AddPerKwh = 0.01m, CapPerKwh = cap / 1000m, FloorPerKwh = floor / 1000m }), import);
            var slow = import.Select((kwh, i) => (decimal)kwh * Math.Clamp((prices[i / 2] / 1000m) + 0.01m, floor / 1000m, cap / 1000m)).Sum();
            Assert.Equal((double)slow, (double)bill.Lines.Single().Amount.Amount, 0.006);
        }, iter: 60);

    [Fact]
    public void Netting_within_the_hour_agrees_with_its_twin() => Gen.Select(RandomTariff.Kwh(Grid.Count), RandomTariff.Kwh(Grid.Count)).Sample((import, export) =>
    {
        var tariff = OneBill.Empty("EUR").Import("energy", 0.30m).Export("feed-in", 0.10m).Rounded(RoundingMode.HalfUp, RoundingPlace.Nowhere) with { NetsWithinMinutes = 60 };
        var slow = 0m;
        for (var i = 0; i < Grid.Count; i += 2)
        {
            var net = (decimal)import[i] + (decimal)import[i + 1] - (decimal)export[i] - (decimal)export[i + 1];
            slow += net * (net > 0 ? 0.30m : 0.10m);
        }
        Assert.Equal((double)slow, (double)Bill(tariff, import, export).Total.Amount, 1e-6);
    }, iter: 60);

    // Half past one, the seed's end of the hours, is skipped in spring and comes twice in autumn.
    [Theory]
    [InlineData(2024, 3, 25, null)]
    [InlineData(2024, 3, 25, "3NOkNpsd-sK1")]
    [InlineData(2024, 10, 21, null)]
    [InlineData(2024, 10, 21, "3NOkNpsd-sK1")]
    public void Called_hours_agree_with_their_twin(int year, int month, int dayOfMonth, string? seed) => Gen.Select(RandomTariff.Kwh(Grid.Count), Gen.Int[0, 13], Gen.Int[0, 47], Gen.Int[1, 47]).Sample((import, day, from, length) =>
    {
        var until = (from + length) % 48;
        var hours = HourSpan.Parse(FormattableString.Invariant($"{from / 2:00}:{from % 2 * 30:00}-{until / 2:00}:{until % 2 * 30:00}"));
        var first = new LocalDate(year, month, dayOfMonth);
        var grid = new IntervalGrid(first.AtStartOfDayInZone(Dublin).ToInstant(), Duration.FromMinutes(30), Grid.Count);
        var called = first.PlusDays(day);
        var tariff = OneBill.Empty("EUR").Import("energy", 0).With(new EventCharge("called", [called], [hours], 0.75m)).Rounded(RoundingMode.HalfUp, RoundingPlace.Nowhere);
        var slow = import.Select((kwh, i) => (Kwh: (decimal)kwh, Local: grid.StartOf(i).InZone(Dublin).LocalDateTime))
            .Where(x => x.Local.Date == called && hours.Contains((x.Local.Hour * 60) + x.Local.Minute)).Sum(x => x.Kwh);
        Assert.Equal((double)(slow * 0.75m), (double)Bill(tariff, import, on: grid, from: first).Total.Amount, 1e-6);
    }, iter: 100, seed: seed);

    [Fact]
    public void Demand_agrees_with_its_twin() => Gen.Select(RandomTariff.Kwh(Grid.Count), RandomTariff.Kwh(Grid.Count), Gen.Bool).Sample((import, reactive, hourly) =>
    {
        var minutes = hourly ? 60 : 30;
        var tariff = OneBill.Empty("EUR").Import("energy", 0).Rounded(RoundingMode.HalfUp, RoundingPlace.Nowhere)
            .With(new DemandCharge("demand", 10, new RateWindow(null, TariffDays.EveryDay, [HourSpan.Parse("17:00-20:00")]), ChargePeriod.Bill, minutes) { Unit = DemandUnit.KilovoltAmpere });
        var size = minutes / 30;
        var slow = Enumerable.Range(0, Grid.Count / size).Select(slot => slot * size).Where(i => Grid.StartOf(i).InZone(Dublin).Hour is >= 17 and < 20).Max(i =>
        {
            var (kwh, kvarh) = (import.Skip(i).Take(size).Sum(), reactive.Skip(i).Take(size).Sum());
            return Math.Sqrt((kwh * kwh) + (kvarh * kvarh)) * 60 / minutes;
        });
        Assert.Equal(slow * 10, (double)Bill(tariff, import, reactive: reactive).Total.Amount, 1e-6);
    }, iter: 60);

    private static Bill Bill(Tariff tariff, double[] import, double[]? export = null, double[]? reactive = null, IntervalGrid? on = null, LocalDate? from = null)
    {
        var first = from ?? Start;
        var plan = TariffHistory.Of(tariff).On(on ?? Grid, Dublin, new BillingOptions { Periods = [new DateSpan(first, first.PlusDays(14))] });
        return Assert.Single(plan.Bills(new MeteredEnergy(import, export ?? new double[Grid.Count]) { ReactiveKvarh = reactive ?? [] }));
    }
}
