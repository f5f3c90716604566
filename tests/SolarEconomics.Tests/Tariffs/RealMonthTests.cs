using System.Text.Json;
using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>A real month of a home with solar under a real plan. Origin: tests/data/tariffs/SOURCE.txt and tests/data/readings.</summary>
public sealed class RealMonthTests
{
    private static readonly DateTimeZone Sydney = DateTimeZoneProviders.Tzdb["Australia/Sydney"];
    private static readonly Site Home = Site.At("Home", -33.9, 151.2, "Australia/Sydney", "AUD");

    [Fact]
    public void The_plan_bills_the_month_as_worked_out_outside_this_project()
    {
        var answer = Request(Plan()).Answer();
        Assert.Equal(new DateSpan(new LocalDate(2023, 3, 1), new LocalDate(2023, 4, 1)), answer.Days);
        Assert.Equal([("supply charge", 31m), ("peak", 87.889m), ("off-peak", 182.849m), ("feed-in", 589.172m)],
            answer.Lines.Select(l => (l.Part, l.Quantity)));
        Assert.Equal(34.666463m, answer.Lines[0].Amount.Amount);
        Assert.Equal(69.412493m, Math.Round(answer.Lines[1].Amount.Amount + answer.Lines[2].Amount.Amount, 6));
        Assert.Equal(104.078956m, Math.Round(answer.TotalBeforeTax!.Value.Amount, 6));
        Assert.Equal(114.49m, answer.Total!.Value.Amount);
        Assert.Equal(1.0, answer.CoveredShare);
    }

    [Fact]
    public void What_the_plan_says_and_no_bill_prices_is_listed_by_its_path() =>
        Assert.Equal(["data.electricityContract.fees[0]", "data.electricityContract.fees[1]", "data.electricityContract.fees[2]"], Plan().Unpriced);

    [Fact]
    public void Billing_days_by_the_wall_clock_touch_one_more_day()
    {
        var answer = (Request(Plan()) with { BillingZone = Sydney, EstimateWhereMissing = true }).Answer();
        Assert.Equal(32m, answer.Lines[0].Quantity);
        Assert.True(answer.IsEstimate);
    }

    [Fact]
    public void A_bill_as_json_has_amounts_as_texts_and_the_end_excluded()
    {
        using var json = JsonDocument.Parse(Request(Plan()).Answer().ToJson());
        var root = json.RootElement;
        Assert.Equal("2023-03-01", root.GetProperty("from").GetString());
        Assert.Equal("2023-04-01", root.GetProperty("to").GetString());
        Assert.Equal("AUD", root.GetProperty("currency").GetString());
        Assert.Equal("104.078955878", root.GetProperty("totalBeforeTax").GetString());
        Assert.Equal("114.49", root.GetProperty("total").GetString());
        Assert.Equal(1.0, root.GetProperty("coveredShare").GetDouble());
        Assert.Equal(87.889m, root.GetProperty("lines")[1].GetProperty("quantity").GetDecimal());
    }

    [Fact]
    public void Days_that_the_readings_do_not_cover_have_a_share_and_no_total()
    {
        var answer = (Request(Plan()) with { To = new LocalDate(2023, 5, 1) }).Answer();
        Assert.Equal(31.0 / 61, answer.CoveredShare, 12);
        Assert.Null(answer.Total);
        Assert.Contains("\"total\": null", answer.ToJson(), StringComparison.Ordinal);
        var estimate = (Request(Plan()) with { To = new LocalDate(2023, 5, 1), EstimateWhereMissing = true }).Answer();
        Assert.True(estimate.IsEstimate);
        // The month's mean day for thirty days more.
        Assert.Equal(270.738m / 31 * 61, estimate.Lines.Where(l => l.Part.EndsWith("peak", StringComparison.Ordinal)).Sum(l => l.Quantity), 6);
    }

    [Theory, PublishedRows("real month")]
    public void Export_is_credited_after_tax(string id) => Published.Check(id, row =>
    {
        var plan = Plan().Latest;
        var paid = new EnergyPart("export", EnergySide.Export, [EnergyRate.Flat("feed-in", (decimal)row.Number("feedin"))]);
        var charges = plan with { Parts = [.. plan.Parts.Where(p => p is not EnergyPart { Side: EnergySide.Export })] };
        var place = row.Text("want") == "unrounded" ? RoundingPlace.Nowhere : RoundingPlace.Line;
        var bill = Assert.Single(Request(TariffHistory.Of(charges.With(paid).Rounded(RoundingMode.HalfUp, place))).Answer().Bills);
        return row.Text("want") switch
        {
            "before export" => bill.Lines.Where(l => l.Amount.Amount > 0).Sum(l => l.Amount.Amount),
            "charges" => bill.Lines.Where(l => l.Amount.Amount > 0).Sum(l => l.Amount.Amount) + bill.Tax.Amount,
            "tax" => bill.Tax.Amount,
            "total" or "unrounded" => bill.Total.Amount,
            var line => bill.Lines.Single(l => l.Part == line["line ".Length..]).Amount.Amount,
        };
    });

    private static TariffHistory Plan() => TariffHistory.Load(TestFiles.Data("energy-plan-two-rate-time-of-use.json"));

    private static BillRequest Request(TariffHistory tariffs) =>
        new(tariffs, Readings.Load(TestFiles.Data("../readings/nem12-5min-solar-month.csv"), Home), Sydney);
}
