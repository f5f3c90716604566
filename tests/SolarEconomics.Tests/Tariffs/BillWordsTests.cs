using System.Globalization;
using System.Text.Json;
using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>What a bill, an answer and a home say of themselves, in words, tables and JSON. Each number by hand.</summary>
public sealed class BillWordsTests
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;
    private static readonly LocalDate Start = new(2024, 4, 1);
    private static readonly Tariff Standard = Tariff.Flat("Standard", "EUR", 0.25m, supplyPerDay: 0.50m, exportPerKwh: 0.10m, tax: 0.10m, from: new LocalDate(2024, 1, 1));

    [Fact]
    public void A_bill_says_what_is_to_pay_and_shows_its_lines()
    {
        // 30 days at 0.50 and 1,200 kWh at 0.25: 315, and 31.50 tax; 100 kWh sent at 0.10.
        var said = OneBill.Of(Standard, kwh: 1200, exportKwh: 100).Say(Plain);
        Assert.Equal("€336.50", said.Figure);
        Assert.Equal("to pay for 1 Apr 2024 to 30 Apr 2024 on \"Standard\": €305.00 and €31.50 tax.", said.Words);
        Assert.Equal(["Every line, the tax and the total are rounded half up to 2 digits."], said.Notes);
        Assert.Equal([Bill.Caution], said.Cautions);
        var table = Assert.Single(said.Tables);
        Assert.Equal("The bill, line by line (EUR)", table.Caption);
        Assert.Equal(["part", "quantity", "unit", "rate", "amount", "why"], table.Columns);
        Assert.Equal(
        [
            ["supply charge", "30", "day", "0.50", "15.00", "30 days of being connected at 0.50 EUR a day, before 10 % tax."],
            ["import", "1,200", "kWh", "0.25", "300.00", "1,200 kWh taken from the grid (at any hour) at 0.25 EUR a kWh, before 10 % tax."],
            ["export", "100", "kWh", "0.10", "−10.00", "100 kWh sent to the grid (at any hour) at 0.10 EUR a kWh, free of tax."],
        ], table.Rows);
        Assert.Throws<ArgumentNullException>(() => OneBill.Of(Standard, 1).Say(null!));
    }

    [Fact]
    public void Tax_that_comes_back_is_rounded_to_the_smallest_coin()
    {
        var bill = OneBill.Of(Standard, kwh: 1200);
        Assert.Equal([346.50m, 346.50m - 10.40m, 315.00m], new[] { 0m, 0.33m, 1m }.Select(share => bill.TotalReclaiming(share).Amount));
        Assert.Throws<ArgumentOutOfRangeException>(() => bill.TotalReclaiming(1.01m));
    }

    [Fact]
    public void An_answer_that_covers_its_days_says_the_total_and_its_notes()
    {
        var said = Ask(hours: 24 * 30).Answer().Say(Plain);
        Assert.Equal(("€214.50", "to pay for 1 Apr 2024 to 30 Apr 2024, tax included."), (said.Figure, said.Words));
        Assert.Equal("The bill, line by line (EUR)", Assert.Single(said.Tables).Caption);
        Assert.Equal("Every line, the tax and the total are rounded half up to 2 digits.", said.Notes[0]);
        Assert.Equal([Bill.Caution], said.Cautions);
    }

    [Fact]
    public void An_answer_without_all_readings_has_no_total_until_it_is_an_estimate()
    {
        // 24 of 30 days: 1 kWh an hour.
        var ask = Ask(hours: 24 * 24) with { From = Start, To = Start.PlusDays(30) };
        var open = ask.Answer();
        Assert.Equal((false, null, null, null), (open.HasTotal, open.TotalBeforeTax, open.Tax, open.Total));
        Assert.Equal("no total", open.Say(Plain).Figure);
        Assert.Equal("for 1 Apr 2024 to 30 Apr 2024: the readings cover 80.0 % of these days. Add the missing readings, choose other days, or ask for an estimate.", open.Say(Plain).Words);
        var estimate = (ask with { EstimateWhereMissing = true }).Answer();
        Assert.Equal("€214.50", estimate.Say(Plain).Figure);
        Assert.Equal("to pay for 1 Apr 2024 to 30 Apr 2024, as an estimate: the readings cover 80.0 %, the rest is the mean of the same time of day.", estimate.Say(Plain).Words);
    }

    [Fact]
    public void An_answer_by_months_adds_lines_up_and_lists_its_bills()
    {
        // April 30 days, May 31: 15.00 + 180.00 and 15.50 + 186.00 before tax.
        var answer = (Ask(hours: 24 * 61) with { PeriodsBy = BillingPeriods.Months }).Answer();
        Assert.Equal((396.50m, 39.65m, 436.15m), (answer.TotalBeforeTax!.Value.Amount, answer.Tax!.Value.Amount, answer.Total!.Value.Amount));
        Assert.Equal([(61m, 30.50m, 3.05m), (1464m, 366m, 36.60m)], answer.Lines.Select(l => (l.Quantity, l.Amount.Amount, l.Tax.Amount)));
        Assert.Equal(new DateSpan(Start, Start.PlusDays(61)), answer.Lines[1].Days);
        Assert.Equal("2 lines that come to 1,464 kWh. The first: 720 kWh taken from the grid (at any hour) at 0.25 EUR a kWh, before 10 % tax.", answer.Lines[1].Why);
        var table = answer.Say(Plain).Tables[1];
        Assert.Equal("Bill by bill (EUR)", table.Caption);
        Assert.Equal(["days", "before tax", "tax", "to pay"], table.Columns);
        Assert.Equal([["1 Apr 2024 to 30 Apr 2024", "195.00", "19.50", "214.50"], ["1 May 2024 to 31 May 2024", "201.50", "20.15", "221.65"]], table.Rows);
    }

    [Fact]
    public void An_answer_as_JSON_keeps_every_cent_as_text()
    {
        var answer = (Ask(hours: 24 * 61) with { PeriodsBy = BillingPeriods.Months }).Answer();
        using var json = JsonDocument.Parse(answer.ToJson());
        var root = json.RootElement;
        Assert.Equal(["from", "to", "currency", "lines", "totalBeforeTax", "tax", "total", "coveredShare", "isEstimate", "unpriced", "periods"], root.EnumerateObject().Select(p => p.Name));
        Assert.Equal(("2024-04-01", "2024-06-01", "EUR", "436.15", 1.0, false), (Text(root, "from"), Text(root, "to"), Text(root, "currency"), Text(root, "total"), root.GetProperty("coveredShare").GetDouble(), root.GetProperty("isEstimate").GetBoolean()));
        var line = root.GetProperty("lines")[1];
        Assert.Equal(("import", "1464", "kWh", "0.25", "366.00", "36.60"), (Text(line, "part"), line.GetProperty("quantity").GetRawText(), Text(line, "unit"), line.GetProperty("rate").GetRawText(), Text(line, "amount"), Text(line, "tax")));
        Assert.StartsWith("2 lines that come to", Text(line, "why"), StringComparison.Ordinal);
        var may = root.GetProperty("periods")[1];
        Assert.Equal(("2024-05-01", "2024-06-01", "201.50", "20.15", "221.65"), (Text(may, "from"), Text(may, "to"), Text(may, "totalBeforeTax"), Text(may, "tax"), Text(may, "total")));
        Assert.Contains(Environment.NewLine, answer.ToJson(), StringComparison.Ordinal);
    }

    [Fact]
    public void JSON_without_all_readings_says_null_and_not_zero()
    {
        var ask = Ask(hours: 24 * 24) with { From = Start, To = Start.PlusDays(30), PeriodsBy = BillingPeriods.Months };
        using var json = JsonDocument.Parse(ask.Answer().ToJson());
        JsonElement[] places = [json.RootElement, json.RootElement.GetProperty("periods")[0]];
        Assert.All(places, at => Assert.All(["totalBeforeTax", "tax", "total"], field => Assert.Equal(JsonValueKind.Null, at.GetProperty(field).ValueKind)));
        using var single = JsonDocument.Parse((ask with { PeriodsBy = null }).Answer().ToJson());
        Assert.False(single.RootElement.TryGetProperty("periods", out _));
    }

    [Fact]
    public void A_home_says_what_it_takes_and_sends()
    {
        var home = HomeEnergy.Of(Site.At("Invented", 53, -9, "Etc/UTC", "EUR"),
            new Readings([Channel("import", FlowKind.Import, 48, 2), Channel("export", FlowKind.Export, 48, 0.5), Channel("roof", FlowKind.Generation, 48, 1)], [], []), TariffHistory.Of(Standard));
        var said = home.Say(Plain);
        Assert.Equal(("96 kWh", "taken from the grid as it is, and 24 kWh sent."), (said.Figure, said.Words));
        Assert.Equal("The home as it is", said.Tables[0].Caption);
        Assert.Equal(["flow", "energy"], said.Tables[0].Columns);
        // Use is what is taken and generated and not sent: 96 + 48 - 24.
        Assert.Equal([["use", "120 kWh"], ["generation", "48 kWh"], ["import", "96 kWh"], ["export", "24 kWh"]], said.Tables[0].Rows);
        Assert.Equal(("120 kWh", "taken from the grid without any plant, and 0 kWh sent."), (home.WithoutPlant().Say(Plain).Figure, home.WithoutPlant().Say(Plain).Words));
    }

    [Fact]
    public void A_history_finds_the_version_of_a_day_and_prints_all()
    {
        var history = TariffHistory.Of(Standard with { Name = "New", From = new LocalDate(2024, 7, 1) }, Standard);
        Assert.Equal(["Standard", "Standard", "New"], new[] { new LocalDate(2024, 1, 1), new LocalDate(2024, 6, 30), new LocalDate(2024, 7, 1) }.Select(d => history.At(d).Name));
        Assert.StartsWith("Found no tariff in force on 2023-12-31, expected one: the first version, \"Standard\", starts on 2024-01-01.",
            Assert.Throws<TariffException>(() => history.At(new LocalDate(2023, 12, 31))).Message, StringComparison.Ordinal);
        Assert.Equal("Standard (EUR, from 2024-01-01); New (EUR, from 2024-07-01)", history.ToString());
        Assert.Equal("New (EUR, for all time)", history.OnlyLatest().ToString());
    }

    private static BillRequest Ask(int hours) => new(TariffHistory.Of(Standard), new Readings([Channel("import", FlowKind.Import, hours, 1)], [], []), DateTimeZone.Utc);

    private static Channel Channel(string name, FlowKind flow, int hours, double kwh)
    {
        Instant[] starts = [.. Enumerable.Range(0, hours).Select(h => Start.AtStartOfDayInZone(DateTimeZone.Utc).ToInstant() + Duration.FromHours(h))];
        return new Channel(name, flow, starts, [.. starts.Select(s => s + Duration.FromHours(1))], [.. Enumerable.Repeat(kwh, hours)], new Quality[hours]);
    }

    private static string Text(JsonElement at, string field) => at.GetProperty(field).GetString()!;
}
