using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>The worth of one more kWh by hour and month. By hand; the price per interval is the second way to the same numbers.</summary>
public sealed class MarginalTableTests
{
    private static readonly DateTimeZone Dublin = DateTimeZoneProviders.Tzdb["Europe/Dublin"];
    // Two weeks of May and two of June.
    private static readonly IntervalGrid Grid = new(new LocalDate(2024, 5, 18).AtStartOfDayInZone(Dublin).ToInstant(), Duration.FromMinutes(30), 28 * 48);
    // Sun from 10 to 16: then 1 kWh is sent in every half hour, else 1 kWh taken.
    private static readonly MeteredEnergy Home = new([.. At(h => h is < 10 or >= 16)], [.. At(h => h is >= 10 and < 16)]);

    [Fact]
    public void A_kWh_is_worth_the_import_price_where_there_is_import_and_the_feed_in_where_there_is_export()
    {
        var tariff = TariffHistory.Of(Tariff.Named("A", "EUR", new LocalDate(2024, 1, 1)).SupplyPerDay(1).Import("peak", 0.50m, "17:00-19:00").Import("other", 0.20m).Export("feed-in", 0.08m).Taxed(0.10m));
        var table = MarginalTable.Of(tariff, Grid, Home, Dublin);
        Assert.Equal(48, table.Cells.Count);
        foreach (var cell in table.Cells)
        {
            var worth = cell.Hour is 17 or 18 ? 0.55 : cell.Hour is >= 10 and < 16 ? 0.08 : 0.22;
            Assert.Equal(worth, cell.Generated, 7);
            Assert.Equal(worth, cell.Used, 7);
        }
        Assert.Equal(0.55 - 0.08, table.WorthOfMoving(17, 12), 7);
        Assert.StartsWith("is what one more kWh is worth at its best, May at 17:00; at its least it is €0.08,", table.Say(CultureInfo.InvariantCulture).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void At_the_edge_of_a_block_left_and_right_differ()
    {
        // May takes 14 days × 36 kWh = 504, the block's end: the last kWh costs 0.10, the next 0.30. June's 504 likewise.
        var blocks = new RateBlocks([new RateBlock(504, 0.10m), new RateBlock(null, 0.30m)], BlockPeriod.Bill);
        var tariff = TariffHistory.Of(OneBill.Empty("EUR").With(new EnergyPart("import", EnergySide.Import, [EnergyRate.InBlocks("energy", blocks)])));
        var whole = new IntervalGrid(new LocalDate(2024, 4, 1).AtStartOfDayInZone(Dublin).ToInstant(), Duration.FromMinutes(30), 30 * 48);
        var table = MarginalTable.Of(tariff, whole, new MeteredEnergy([.. Enumerable.Repeat(504.0 / whole.Count, whole.Count)], new double[whole.Count]), Dublin, differenceKwh: 0.5);
        Assert.All(table.Cells, c => Assert.Equal((0.10, 0.30), (Math.Round(c.Generated, 6), Math.Round(c.Used, 6))));
        Assert.Equal(0.5, table.DifferenceKwh);
    }

    private static IEnumerable<double> At(Func<int, bool> hours) => Enumerable.Range(0, Grid.Count).Select(i => hours(Grid.StartOf(i).InZone(Dublin).Hour) ? 1.0 : 0.0);
}
