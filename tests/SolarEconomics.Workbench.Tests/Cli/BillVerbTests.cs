using System.Text.Json;

namespace SolarEconomics.Workbench.Tests;

/// <summary>The bill and the comparison as people ask for them, on the real month of tests/data.</summary>
public sealed class BillVerbTests : IDisposable
{
    private static readonly string Plan = Data("tariffs/energy-plan-two-rate-time-of-use.json");
    private static readonly string Month = Data("readings/nem12-5min-solar-month.csv");
    private readonly Scratch scratch = new();

    [Theory]
    [InlineData("Australia/Sydney")]
    [InlineData(null)]
    public async Task A_real_month_on_a_real_plan_comes_out_to_the_cent(string? zone)
    {
        var (code, said, _) = await RunAsync(["bill", "--tariff", Plan, "--readings", Month, "--json", .. zone is null ? Array.Empty<string>() : ["--zone", zone]]);
        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(said);
        var root = json.RootElement;
        Assert.Equal(("2023-03-01", "2023-04-01", "AUD", "114.49"), (Text(root, "from"), Text(root, "to"), Text(root, "currency"), Text(root, "total")));
        Assert.Equal(["supply charge 34.666463", "peak 30.050040101", "off-peak 39.362452777", "feed-in 0.00"],
            root.GetProperty("lines").EnumerateArray().Select(l => Text(l, "part") + " " + Text(l, "amount")));
        Assert.Equal(3, root.GetProperty("unpriced").GetArrayLength());
    }

    [Fact]
    public async Task The_end_is_excluded_and_part_of_the_month_is_billed_by_its_days()
    {
        var (code, said, _) = await RunAsync("bill", "--tariff", Plan, "--readings", Month, "--from", "2023-03-10", "--to", "2023-03-12", "--json");
        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(said);
        Assert.Equal(2, json.RootElement.GetProperty("lines")[0].GetProperty("quantity").GetInt32());
    }

    [Fact]
    public async Task Days_that_the_readings_do_not_cover_have_no_total_and_end_with_1()
    {
        var (code, said, _) = await RunAsync("bill", "--tariff", Plan, "--readings", Month, "--to", "2023-05-01", "--json");
        Assert.Equal(1, code);
        using var json = JsonDocument.Parse(said);
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("total").ValueKind);
        Assert.Equal(31.0 / 61, json.RootElement.GetProperty("coveredShare").GetDouble(), 9);
        var (estimated, words, _) = await RunAsync("bill", "--tariff", Plan, "--readings", Month, "--to", "2023-05-01", "--estimate");
        Assert.Equal(0, estimated);
        Assert.Contains("as an estimate", words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_bill_for_people_says_why_and_what_to_check()
    {
        var (_, said, _) = await RunAsync("bill", "--tariff", Plan, "--readings", Month);
        Assert.StartsWith("A$114.49 to pay", said, StringComparison.Ordinal);
        Assert.Contains("taken from the grid (every day, 15:00–21:00) at 0.341909 AUD a kWh", said, StringComparison.Ordinal);
        Assert.Contains(Bill.Caution, said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_comparison_lists_the_totals_that_bill_prints_cheapest_first()
    {
        var folder = Path.Combine(scratch.Folder, "plans");
        Directory.CreateDirectory(folder);
        File.Copy(Plan, Path.Combine(folder, "two-rate.json"));
        File.Copy(Data("tariffs/plan-every-part.json"), Path.Combine(folder, "every-part.json"));
        var (code, said, _) = await RunAsync("compare", "--tariffs", folder, "--readings", Month, "--json");
        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(said);
        var ranks = json.RootElement.EnumerateArray().ToList();
        Assert.Equal(["every-part", "two-rate"], ranks.Select(r => Text(r, "tariff")));
        Assert.Equal("114.49", Text(ranks[1], "total"));
        Assert.False(ranks[1].GetProperty("tie").GetBoolean());
        var (_, alone, _) = await RunAsync("bill", "--tariff", Path.Combine(folder, "every-part.json"), "--readings", Month, "--json");
        Assert.Contains($"\"total\": \"{Text(ranks[0], "total")}\"", alone, StringComparison.Ordinal);
        var (partly, without, _) = await RunAsync("compare", "--tariffs", folder, "--readings", Month, "--to", "2023-05-01", "--json");
        Assert.Equal(1, partly);
        Assert.Contains("\"total\": null", without, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Periods_are_bills_of_their_own_and_a_plain_call_says_nothing_of_them()
    {
        var (_, plain, _) = await RunAsync("bill", "--tariff", Plan, "--readings", Month, "--json");
        Assert.DoesNotContain("\"periods\"", plain, StringComparison.Ordinal);
        var (code, said, _) = await RunAsync("bill", "--tariff", Plan, "--readings", Month, "--periods", "2023-03-01,2023-03-11,2023-03-21", "--json");
        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(said);
        Assert.Equal("2023-03-21", Text(json.RootElement, "to"));
        var periods = json.RootElement.GetProperty("periods").EnumerateArray().ToList();
        Assert.Equal([("2023-03-01", "2023-03-11"), ("2023-03-11", "2023-03-21")], periods.Select(p => (Text(p, "from"), Text(p, "to"))));
        Assert.Equal(Decimal(json.RootElement), periods.Sum(Decimal));
        var (_, words, _) = await RunAsync("bill", "--tariff", Plan, "--readings", Month, "--periods", "month");
        Assert.Contains("Bill by bill (AUD)", words, StringComparison.Ordinal);
        static decimal Decimal(JsonElement at) => decimal.Parse(Text(at, "total"), System.Globalization.CultureInfo.InvariantCulture);
    }

    [Fact]
    public async Task A_condition_that_is_met_counts()
    {
        var plan = Data("tariffs/plan-every-part.json");
        var (_, without, _) = await RunAsync("bill", "--tariff", plan, "--readings", Month, "--json");
        var (code, with, _) = await RunAsync("bill", "--tariff", plan, "--readings", Month, "--condition", "pay on time", "--json");
        Assert.Equal(0, code);
        using var before = JsonDocument.Parse(without);
        using var after = JsonDocument.Parse(with);
        Assert.Equal((1, 0), (before.RootElement.GetProperty("unpriced").GetArrayLength(), after.RootElement.GetProperty("unpriced").GetArrayLength()));
        Assert.True(decimal.Parse(Text(after.RootElement, "total"), System.Globalization.CultureInfo.InvariantCulture) < decimal.Parse(Text(before.RootElement, "total"), System.Globalization.CultureInfo.InvariantCulture));
    }

    [Theory]
    [InlineData("bill --tariff PLAN --readings MONTH --periods weekly", "--periods weekly: expected \"month\", \"quarter\"")]
    [InlineData("bill --tariff PLAN --readings MONTH --periods 2023-03-11,2023-03-01", "at least two days in order")]
    [InlineData("bill --tariff PLAN --readings MONTH --condition prompt", "Found condition \"prompt\", expected none, as the tariff names no condition")]
    [InlineData("bill --tariff none.json --readings MONTH", "none.json")]
    [InlineData("bill --tariff PLAN --readings none.csv", "none.csv")]
    [InlineData("bill --tariff PLAN --readings PLAN", "expected")]
    [InlineData("bill --tariff PLAN", "--readings")]
    [InlineData("bill --tariff PLAN --readings MONTH --from March", "--from March: found no day, expected one such as 2023-03-01.")]
    [InlineData("bill --tariff PLAN --readings MONTH --from 2023-03-05 --to 2023-03-05", "expected the end after the start")]
    [InlineData("bill --tariff PLAN --readings MONTH --from 2024-01-01", "expected the end after the start")]
    [InlineData("bill --tariff PLAN --readings MONTH --zone Sydney", "expected an IANA name")]
    [InlineData("bill --tariff PLAN --readings MONTH --meter 7", "expected one that the readings hold")]
    [InlineData("bill --tariff PLAN --readings MONTH --controlled-load E9", "expected a channel of import")]
    [InlineData("compare --tariffs none --readings MONTH", "none")]
    public async Task What_cannot_start_ends_with_2_and_says_why(string line, string expected)
    {
        string[] arguments = [.. line.Split(' ').Select(a => a.Replace("PLAN", Plan, StringComparison.Ordinal).Replace("MONTH", Month, StringComparison.Ordinal))];
        var (code, said, complained) = await RunAsync(arguments);
        Assert.Equal(2, code);
        Assert.Equal("", said);
        Assert.Contains(expected, complained, StringComparison.Ordinal);
        Assert.DoesNotContain("Something went wrong", complained, StringComparison.Ordinal);
    }

    public void Dispose() => scratch.Dispose();

    private static string Text(JsonElement at, string field) => at.GetProperty(field).GetString()!;

    private static string Data(string name) => Path.Combine(Repository.Root, "tests", "data", name);

    private async Task<(int Code, string Said, string Complained)> RunAsync(params string[] arguments)
    {
        var (answers, messages) = (new StringWriter(), new StringWriter());
        var code = await CommandLine.StartAsync(arguments, new Io(answers, messages, IsTerminal: false) { Folder = scratch.Folder });
        return (code, answers.ToString(), messages.ToString());
    }
}
