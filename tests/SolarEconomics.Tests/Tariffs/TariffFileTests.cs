using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

public sealed class TariffFileTests
{
    [Fact]
    public void A_file_reads_as_the_same_history_as_the_sheet_written_in_code()
    {
        var read = TariffHistory.Load(TestFiles.Data("evening-peak.json"));
        var zone = DateTimeZoneProviders.Tzdb["Europe/Dublin"];
        var standard = Tariff.Flat("Standard", currency: "EUR", importPerKwh: 0.30m, supplyPerDay: 0.60m, exportPerKwh: 0.20m, tax: 0.09m,
            from: new LocalDate(2022, 1, 1));
        var peak = Tariff.Named("Evening peak", "EUR", from: new LocalDate(2023, 10, 1))
            .Season("winter", from: (11, 1), until: (3, 1))
            .SupplyPerDay(0.65m)
            .Import("night", 0.19m, hours: "23:00-08:00")
            .Import("evening peak", 0.44m, hours: "17:00-19:00", days: TariffDays.Weekdays, season: "winter")
            .Import("day", 0.33m)
            .ImportOnTop("levy", 0.01m)
            .Export("export", 0.21m)
            .Taxed(0.09m);
        var grid = new IntervalGrid(Instant.FromUtc(2023, 9, 1, 0, 0), Duration.FromMinutes(30), 48 * 120);
        var kwh = Enumerable.Range(0, grid.Count).Select(i => (i % 7) * 0.1).ToArray();
        var fromFile = read.On(grid, zone).Bills(kwh, kwh);
        var fromCode = TariffHistory.Of(peak, standard).On(grid, zone).Bills(kwh, kwh);
        Assert.Equal(fromCode.Select(b => b.Total), fromFile.Select(b => b.Total));
        Assert.Equal(4, fromFile.Count);
        Assert.Equal("Evening peak", read.Latest.Name);
    }

    [Fact]
    public void Several_mistakes_are_listed_together_with_their_places()
    {
        var path = TestFiles.Write("""
            {
              "version": 1,
              "currency": "EUR",
              "tariffs": [
                { "name": "A", "from": "2022-01-01", "suply": { "perDay": 0.6 },
                  "import": [ { "name": "x", "perKwH": 0.3 } ],
                  "rounding": { "mode": "half upp" } }
              ]
            }
            """);
        var error = Assert.Throws<RecordException>(() => TariffHistory.Load(path));
        Assert.Equal(
            $"""
            {path}: found 3 mistakes:
              {path}, line 5, column 42: found field "suply", expected one of the known fields, such as supply, export, fees.
              {path}, line 6, column 34: found field "perKwH", expected one of the known fields, such as perKwh, blocks, name.
              {path}, line 7, column 21: found "half upp", expected one of half up, half even, towards zero.
            """.ReplaceLineEndings(), error.Message);
    }

    [Theory]
    [InlineData("EURO", "line 1, column 17: found currency \"EURO\", expected a code of ISO 4217 such as EUR")]
    public void An_unknown_currency_names_the_nearest(string currency, string expected)
    {
        var path = TestFiles.Write($$"""{ "version": 1, "currency": "{{currency}}", "tariffs": [ { "name": "A", "from": "2022-01-01", "import": [ { "name": "x", "perKwh": 0.3 } ] } ] }""");
        var error = Assert.Throws<RecordException>(() => TariffHistory.Load(path));
        Assert.Contains(expected, error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_file_says_where_it_was_looked_for()
    {
        var error = Assert.Throws<RecordException>(() => TariffHistory.Load("no-such-tariff.json"));
        Assert.Equal("no-such-tariff.json: found no such file, expected a tariff file or a regulator's energy plan. Looked in "
            + Path.GetFullPath("no-such-tariff.json") + ".", error.Message);
    }

    [Fact]
    public void An_uncovered_hour_is_named_as_a_calendar_with_its_place()
    {
        var path = TestFiles.Write("""
            { "version": 1, "currency": "EUR", "tariffs": [
              { "name": "A", "from": "2022-01-01",
                "seasons": [ { "name": "winter", "from": "11-01", "until": "03-01" } ],
                "import": [
                  { "name": "day", "perKwh": 0.3, "when": [ { "hours": ["00:00-17:00", "19:00-24:00"] } ] },
                  { "name": "evening", "perKwh": 0.4, "when": [ { "days": ["weekdays"], "hours": ["17:00-19:00"] }, { "season": "winter", "days": ["weekdays"], "hours": ["16:00-16:30"] } ] } ] } ] }
            """);
        var error = Assert.Throws<RecordException>(() => TariffHistory.Load(path));
        Assert.Equal(
            $"""
            {path}: found 2 mistakes:
              {path}, line 4, column 5: found in "A" weekdays in winter, 16:00–16:30, two rates: "day" and "evening", expected every hour covered once.
              {path}, line 4, column 5: found in "A" weekends, 17:00–19:00, no rate, expected every hour covered once.
            """.ReplaceLineEndings(), error.Message);
    }

    [Theory]
    [InlineData("", "found an empty file")]
    [InlineData("{ \"version\": 1,, }", "line 1, column 16: found text that is not JSON")]
    [InlineData("{ \"version\": 2 }", "found version 2, expected 1: the file was written by a newer version of this library")]
    [InlineData("[]", "expected")]
    [InlineData("{ \"version\": 1, \"version\": 1, \"currency\": \"EUR\", \"tariffs\": [] }", "field \"version\" twice")]
    public void A_file_that_is_no_tariff_gives_one_clear_message(string text, string expected)
    {
        var error = Assert.Throws<RecordException>(() => TariffHistory.Load(TestFiles.Write(text)));
        Assert.Contains(expected, error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_kind_of_part_reads_from_a_file()
    {
        var bill = OneBill.Of(TariffHistory.Load(TestFiles.Data("every-part.json")).Latest, kwh: 300, exportKwh: 100);
        Assert.Equal(
        [
            "supply charge 9.00", "membership 2.50", "energy, first 10 kWh a day 60.00", "grid 6.12", "demand 3.33", "levy 3.31", "loyalty -3.00", "feed-in -5.00",
        ], bill.Lines.Select(l => FormattableString.Invariant($"{l.Part} {l.Amount.Amount:0.00}")));
    }

    [Theory]
    [InlineData("\"import\": [ { \"name\": \"x\" } ]", "found neither \"perKwh\" nor \"blocks\", expected one of them")]
    [InlineData("\"tax\": 0.1", "found no price of import, expected a field \"import\", \"importTiers\" or \"importSeries\" with prices per kWh")]
    [InlineData("\"import\": [ { \"name\": \"x\", \"perKwh\": 1e400 } ]", "found number 1e400, expected a number with at most 28 digits")]
    [InlineData("\"import\": [ { \"name\": \"x\", \"blocks\": [ { \"upToKwh\": 9, \"perKwh\": 1 }, { \"upToKwh\": 5, \"perKwh\": 1 } ] } ]",
        "found in \"A\" blocks of \"x\" ending at 9, 5, expected each to end above the one before, and only the last without an end")]
    [InlineData("\"import\": [ { \"name\": \"x\", \"perKwh\": 1 } ], \"levies\": [ { \"name\": \"l\", \"fraction\": 0.1, \"of\": [ \"imports\" ] } ]",
        "found in \"A\" \"l\" on \"imports\", expected a part that stands before it: import")]
    [InlineData("\"import\": [ { \"name\": \"x\", \"perKwh\": 1, \"when\": [ { \"season\": \"wintr\" } ] } ], \"seasons\": [ { \"name\": \"winter\", \"from\": \"11-31\", \"until\": \"03-01\" } ]",
        "found \"11-31\", expected a month and day that exist")]
    public void A_part_that_contradicts_itself_is_named(string part, string expected)
    {
        var path = TestFiles.Write($$"""{ "version": 1, "currency": "EUR", "tariffs": [ { "name": "A", "from": "2022-01-01", {{part}} } ] }""");
        var error = Assert.Throws<RecordException>(() => TariffHistory.Load(path));
        Assert.Contains(expected, error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void All_mistakes_of_a_file_stand_in_one_message_whatever_their_kind()
    {
        var path = TestFiles.Write("""
            { "version": 1, "currency": "EUX", "zone": "Europe/Dubln", "tariffs": [
              { "name": "A", "from": "2022-01-01", "imprt": [], "holidaysOf": { "country": "IRL" }, "supply": { "perDay": "cheap" },
                "seasons": [ { "name": "winter", "from": "13-01", "until": "04-01" } ],
                "import": [ { "name": "day", "perKwh": -0.3, "when": [ { "hours": ["08:00-25:00"] } ] },
                  { "name": "night", "blocks": [ { "upToKwh": 100, "perKwh": 0.1 }, { "upToKwh": 50, "perKwh": 0.2 } ] }, { "nam": "x", "perKwh": 1 } ] },
              { "name": "B", "from": "2023-01-01",
                "import": [ { "name": "peak", "perKwh": 0.4, "when": [ { "days": ["weekends"], "hours": ["17:00-19:00"] } ] } ] },
              { "name": "C", "from": "2023-01-01", "import": [ { "name": "any", "perKwh": 0.4, "when": [ { "season": "summer" } ] } ] } ],
              "growth": { "import": 0.03, "until": "2030-02-30" } }
            """);
        var error = Assert.Throws<RecordException>(() => TariffHistory.Load(path));
        string[] expected =
        [
            "\"EUX\"", "Europe/Dubln", "field \"imprt\", expected one of the known fields, such as import", "country \"IRL\"", "\"cheap\"", "\"13-01\"", "a price below zero in \"day\"",
            "\"08:00-25:00\"", "blocks of \"night\" ending at 100, 50", "field \"nam\", expected one of the known fields, such as name", "no field \"name\"",
            "weekdays, 00:00–24:00, no rate", "\"C\" from the same day as \"B\"", "season \"summer\"", "\"2030-02-30\"",
        ];
        foreach (var words in expected) Assert.Contains(words, error.Message, StringComparison.Ordinal);
        // Nothing follows from a mistake that was named already: A's gaps come from what could not be read.
        Assert.DoesNotContain("in \"A\" every day", error.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("no price of import", error.Message, StringComparison.Ordinal);
        Assert.Equal(error.Problems.OrderBy(p => p.Line).ThenBy(p => p.Column), error.Problems);
    }

    [Fact]
    public void No_damage_of_a_file_goes_unnamed_or_unread() => Gen.Int[0, 4000].Select(Gen.Int[0, 5]).Sample((at, how) =>
    {
        // One place of a file with every part is damaged: it is read, or refused with a place; nothing else is thrown.
        var text = File.ReadAllText(TestFiles.Data("rare-parts.json"));
        var i = at % text.Length;
        text = how switch
        {
            0 => text.Remove(i, 1),
            1 => text.Insert(i, "0"),
            2 => text.Insert(i, "null"),
            3 => text.Replace("\"name\"", "\"nmae\"", StringComparison.Ordinal),
            4 => text[..i] + text[i..].Replace("\"perKwh\": ", "\"perKwh\": -", StringComparison.Ordinal),
            _ => text[..i] + text[i..].Replace(": [", ": 7, \"x\": [", StringComparison.Ordinal),
        };
        var path = TestFiles.Write(text);
        File.Copy(TestFiles.Data("market-april.csv"), Path.Combine(Path.GetDirectoryName(path)!, "market-april.csv"), overwrite: true);
        try
        {
            Assert.NotEmpty(TariffHistory.Load(path).Versions);
        }
        catch (RecordException e)
        {
            Assert.Contains("expected", e.Message, StringComparison.Ordinal);
        }
    }, iter: 300, threads: 1);
}
