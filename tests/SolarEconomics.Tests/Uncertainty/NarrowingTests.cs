namespace SolarEconomics.Tests;

/// <summary>The advice which record would narrow the value most: worked out by adding each, so that it is another for another site.</summary>
public class NarrowingTests
{
    private static readonly Device Roof = new("roof", MeasurementPoint.InverterAcOut) { RatedKwp = 5, InService = SmallSite.Day };
    private static readonly Device Dc = Roof with { Point = MeasurementPoint.ControllerDcOut, ToAcLow = 0.8, ToAcHigh = 1.0 };
    private static readonly Device Battery = new("battery", MeasurementPoint.InverterAcOut) { UsableKwh = 3, InService = SmallSite.Day };

    private static readonly Channel Made = SmallSite.Hours("roof", FlowKind.Generation, (10, 4.0), (12, 4.0));
    private static readonly Channel Import = SmallSite.Hours("import", FlowKind.Import, (20, 1.0));
    private static readonly Channel Export = SmallSite.Hours("export", FlowKind.Export, (12, 1.0));

    private static WorthToDate Of(Site site, params Channel[] channels) => Worth.ToDate(site, SmallSite.Of(channels), SmallSite.Flat(3m, 1m));

    [Fact]
    public void A_site_that_counts_in_DC_needs_an_AC_counter_and_one_without_a_meter_needs_the_meter() // by hand
    {
        // 8 kWh in DC are 6.4 to 8 at the board, at 3.00: less than half a unit of currency is no advice, so prices are high.
        var counted = Of(SmallSite.Site(Dc), Made, Import, Export);
        Assert.Equal(new Narrowing("an AC counter behind roof", Money.Nominal(1.6m * 3m, Currency.Of("EUR"))), NarrowedBy(counted, 4.80m));
        // 8 kWh used or exported: between 3.00 and 1.00 each.
        var unmetered = Of(SmallSite.Site(Roof), Made);
        Assert.Equal(new Narrowing("import and export by interval, from the meter or the utility", Money.Nominal(16m, Currency.Of("EUR"))), NarrowedBy(unmetered, 16m));
    }

    /// <summary>The first advice, which for these sites takes away the whole range.</summary>
    private static Narrowing NarrowedBy(WorthToDate worth, decimal width)
    {
        Assert.Equal(width, worth.Range.Width!.Value.Amount);
        return worth.Narrowing[0];
    }

    [Fact]
    public void The_record_that_narrows_most_comes_first_and_its_width_is_the_one_found_by_adding_it()
    {
        // Nobody read the battery, the meter is missing and the counter counts DC: three records would help, each by another amount.
        var worth = Of(SmallSite.Site(Dc, Battery), Made);
        Assert.True(worth.Narrowing.Count > 1);
        Assert.Equal(worth.Narrowing.OrderByDescending(n => n.Narrower!.Value.Amount), worth.Narrowing);
        var advised = worth.Narrowing.Single(n => n.Record.StartsWith("an AC counter", StringComparison.Ordinal));
        var with = Of(SmallSite.Site(Dc with { ToAcLow = 0.9, ToAcHigh = 0.9 }, Battery), Made);
        Assert.Equal((double)(worth.Range.Width!.Value - with.Range.Width!.Value).Amount, (double)advised.Narrower!.Value.Amount, 0.02);
    }
}
