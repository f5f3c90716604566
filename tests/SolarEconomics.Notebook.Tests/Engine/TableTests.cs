namespace SolarEconomics.Notebook.Tests;

/// <summary>A table that a step answered with can be read page by page, as long as the session holds it.</summary>
[Collection(EngineCollection.Name)]
public sealed class TableTests(EngineFixture engine)
{
    private const string Code = "Frame.FromRecords(Enumerable.Range(0, 1000).Select(i => new { Number = (i * 7) % 1000, Half = i % 10 == 3 ? double.NaN : i / 2.0, Name = \"row \" + i }))";

    [Fact]
    public async Task It_is_sorted_searched_and_paged()
    {
        var id = TableOf(await StepRun.Of(engine.Session, Code));
        var first = await Read(new TableQuery(id, 0, 3));
        Assert.Equal(["", "Number", "Half", "Name"], first.Columns);
        Assert.Equal((1000, 1000), (first.Found, first.Total));
        Assert.Equal(["0", "0", "0", "row 0"], first.Rows[0]);
        Assert.Equal(["999", "998"], (await Read(new TableQuery(id, 0, 2, SortBy: 1, Descending: true))).Rows.Select(row => row[1]));
        Assert.Equal(["10", "11"], (await Read(new TableQuery(id, 10, 2, SortBy: 1))).Rows.Select(row => row[1]));
        var found = await Read(new TableQuery(id, 0, 50, Find: "ROW 99"));
        Assert.Equal((11, 1000), (found.Found, found.Total));
        Assert.Equal("missing", (await Read(new TableQuery(id, 999, 1, SortBy: 2, Descending: true))).Rows[0][2]);
    }

    [Fact]
    public async Task For_a_file_numbers_are_written_whole_and_what_is_missing_is_empty()
    {
        var id = TableOf(await StepRun.Of(engine.Session, "Frame.FromRecords(new[] { new { Kwh = 1234.56789, Cost = double.NaN } })"));
        Assert.Equal(["0", "1,234.5679", "missing"], (await Read(new TableQuery(id, 0, 1))).Rows[0]);
        Assert.Equal(["0", "1234.56789", ""], (await Read(new TableQuery(id, 0, 1, ForFile: true))).Rows[0]);
    }

    [Fact]
    public async Task It_is_gone_once_its_step_is_worked_out_again()
    {
        var id = TableOf(await StepRun.Of(engine.Session, Code));
        await engine.Session.RunAsync(new RunStep(id.Split('/')[0], "1"));
        Assert.Null(await engine.Session.ReadTableAsync(new TableQuery(id, 0, 1)));
    }

    [Theory]
    [InlineData("new[] { new { Month = 5, Kwh = 210.5 }, new { Month = 6, Kwh = 240.0 } }", "Month,Kwh", "0,5,210.5", "1,6,240")]
    [InlineData("record Sale(string Part, int Euro);\nnew List<Sale> { new(\"inverter\", 90) }.Select(s => s)", "Part,Euro", "0,inverter,90")]
    [InlineData("new Dictionary<string, int> { [\"used\"] = 3 }", "Key,Value", "0,used,3")]
    public async Task A_list_of_records_is_a_table(string code, string columns, params string[] rows)
    {
        var page = await Read(new TableQuery(TableOf(await StepRun.Of(engine.Session, code)), 0, 10));
        Assert.Equal("," + columns, string.Join(',', page.Columns));
        Assert.Equal(rows, page.Rows.Select(row => string.Join(',', row)));
    }

    [Theory]
    [InlineData("new[] { 1, 2 }", "1\n2")]
    [InlineData("Array.Empty<KeyValuePair<string, int>>()", "an empty list")]
    [InlineData("Enumerable.Range(1, 2).Select(i => i == 1 ? new { I = 5 / (i - 1) } : null)", "The result is a RangeSelectIterator")]
    public async Task Other_lists_stay_words(string code, string words)
    {
        var run = await StepRun.Of(engine.Session, code);
        var output = run.Outputs.Single();
        Assert.Null(output["metadata"]!["solareconomics"]?["table"]);
        Assert.StartsWith(words, MultilineText.Read(output["data"]!["text/plain"]), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_endless_list_of_records_ends_as_words()
    {
        var run = await StepRun.Of(engine.Session, "IEnumerable<KeyValuePair<int, int>> Endless() { for (var i = 0; ; i++) yield return new(i, i); }\nEndless()");
        Assert.EndsWith("[49, 49]\n…", MultilineText.Read(run.Outputs.Single()["data"]!["text/plain"]), StringComparison.Ordinal);
    }

    private async Task<TablePage> Read(TableQuery query) => (await engine.Session.ReadTableAsync(query))!;

    private static string TableOf(StepRun run) => (string)run.Outputs.Single()["metadata"]!["solareconomics"]!["table"]!;
}
