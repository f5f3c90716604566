using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>Bills of a single period in a zone without clock changes, energy spread evenly or put into hours of the day.</summary>
internal static class OneBill
{
    internal static readonly LocalDate Start = new(2024, 4, 1);

    internal static Tariff Empty(string currency = "USD") => Tariff.Named("Published", currency, new LocalDate(2000, 1, 1));

    internal static Bill Of(Tariff tariff, double kwh, int days = 30, double exportKwh = 0) =>
        Of(tariff, _ => kwh, days, exportKwh);

    /// <summary>Each half hour takes its share: <paramref name="kwhAt"/> gives the bill's energy that goes into a half hour's place in the day.</summary>
    internal static Bill Of(Tariff tariff, Func<int, double> kwhAt, int days = 30, double exportKwh = 0)
    {
        var grid = new IntervalGrid(Start.AtStartOfDayInZone(DateTimeZone.Utc).ToInstant(), Duration.FromMinutes(30), days * 48);
        var import = Enumerable.Range(0, grid.Count).Select(i => kwhAt(i % 48) / grid.Count).ToArray();
        var export = Enumerable.Repeat(exportKwh / grid.Count, grid.Count).ToArray();
        var options = new BillingOptions { Periods = [new DateSpan(Start, Start.PlusDays(days))] };
        return Assert.Single(TariffHistory.Of(tariff).On(grid, DateTimeZone.Utc, options).Bills(import, export));
    }

    internal static decimal Want(Bill bill, string want) => want.Split(' ') switch
    {
        ["line", var number] => bill.Lines[int.Parse(number) - 1].Amount.Amount,
        ["quantity", var number] => bill.Lines[int.Parse(number) - 1].Quantity,
        ["subtotal"] => bill.TotalBeforeTax.Amount,
        ["tax"] => bill.Tax.Amount,
        ["total"] => bill.Total.Amount,
        _ => throw new ArgumentException("Unknown want: " + want, nameof(want)),
    };

    internal static RateBlocks Blocks(PublishedRow row, string ends, BlockPeriod per = BlockPeriod.Bill)
    {
        var prices = row.Numbers("prices");
        var limits = row.Numbers(ends);
        return new RateBlocks([.. prices.Select((p, i) => new RateBlock(i < limits.Length ? (decimal)limits[i] : null, (decimal)p))], per);
    }
}
