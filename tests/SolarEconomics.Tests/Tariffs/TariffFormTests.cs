namespace SolarEconomics.Tests.Tariffs;

/// <summary>Every word that a tariff file may hold, and the mistakes it can make: all that is read of each, word for word. Invented tariffs.</summary>
public sealed class TariffFormTests
{
    private const string Import = "\"import\": [ { \"name\": \"use\", \"perKwh\": 0.20 } ]";

    [Fact]
    public void What_a_tariff_file_may_say() => Check("tariff-forms",
        ("rounding half even, each bill", Of($"{Import}, \"rounding\": {{ \"mode\": \"half even\", \"each\": \"bill\", \"digits\": 3 }}")),
        ("rounding towards zero, nowhere", Of($"{Import}, \"rounding\": {{ \"mode\": \"towards zero\", \"each\": \"nowhere\" }}")),
        ("rounding as usual", Of($"{Import}, \"rounding\": {{ \"mode\": \"half up\", \"each\": \"line\" }}")),
        ("fixed charges of every time and share", Of($"{Import}, \"supply\": {{ \"perDay\": 0.1, \"perMonth\": 2, \"perYear\": 30, \"perBill\": 4 }}, \"fees\": [ {{ \"perMonth\": 1, \"proration\": \"by thirtieths\" }}, {{ \"name\": \"card\", \"perBill\": 2, \"proration\": \"whole\", \"paysFor\": \"a card\" }} ], "
            + "\"fixedDiscounts\": [ { \"perYear\": 12, \"condition\": \"pay on time\" } ], \"prepayments\": [ { \"perMonth\": 9 } ], \"minimumBill\": { \"amount\": 8, \"per\": \"month\" }")),
        ("connections", Of($"{Import}, \"connection\": [ {{ \"name\": \"fuse\", \"size\": 16, \"unit\": \"A\", \"perUnit\": 0.1 }}, {{ \"name\": \"line\", \"size\": 9, \"unit\": \"kVA\", \"perUnit\": 0.2, \"per\": \"year\" }}, {{ \"name\": \"power\", \"size\": 5, \"unit\": \"kW\", \"perUnit\": 0.3 }} ]")),
        ("blocks of every time", Of("\"import\": [ " + string.Join(", ", new[] { "day", "days of bill", "month", "quarter", "thirty days", "year", "season", "bill" }.Select((per, i) =>
            $"{{ \"name\": \"in {per}\", \"blocks\": [ {{ \"upToKwh\": 10, \"perKwh\": 0.1 }}, {{ \"perKwh\": 0.2 }} ], \"blocksPer\": \"{per}\", \"when\": [ {{ \"hours\": [\"{3 * i:00}:00-{3 * (i + 1):00}:00\"] }} ] }}")) + " ]")),
        ("blocks that run on", Of("\"import\": [ { \"name\": \"use\", \"blocks\": [ { \"upToKwh\": 10, \"perKwh\": 0.1 }, { \"perKwh\": 0 } ], \"blocksPer\": \"year\", \"blocksRunOn\": true } ]")),
        ("tiers", Of("\"importTiers\": { \"name\": \"steps\", \"per\": \"month\", \"tiers\": [ { \"upToKwh\": 100, \"fixed\": 5, \"blocks\": [ { \"perKwh\": 0.1 } ] }, { \"blocks\": [ { \"upToKwh\": 50, \"perKwh\": 0.2 }, { \"perKwh\": 0.3 } ] } ] }")),
        ("on top", Of($"{Import}, \"importOnTop\": [ {{ \"name\": \"levy\", \"perKwh\": -0.01, \"quantityFactor\": 1.05, \"quantityDigits\": 0 }}, {{ \"name\": \"fuel\", \"perKwh\": 0.02 }} ], \"levies\": [ {{ \"name\": \"share\", \"fraction\": 0.05 }} ], \"discounts\": [ {{ \"name\": \"less\", \"fraction\": 0.1, \"of\": [\"import\"], \"condition\": \"pay on time\" }} ]")),
        ("events, demand, reactive energy and credits with nothing but what they need", Of($"{Import}, \"events\": [ {{ \"name\": \"call\", \"days\": [\"2024-03-01\"], \"hours\": [\"17:00-19:00\"], \"perKwh\": 1 }} ], \"eventRebates\": [ {{ \"name\": \"left\", \"days\": [\"2024-03-02\"], \"hours\": [\"08:00-09:00\"], \"perKwh\": 2 }} ], \"demand\": [ {{ \"name\": \"top\", \"perKw\": 3 }} ], "
            + "\"reactive\": { \"name\": \"idle\", \"perKvarh\": 0.01 }, \"powerFactor\": { \"name\": \"factor\", \"least\": 1, \"fractionPerHundredth\": 0.01 }, \"controlledLoad\": [ { \"name\": \"tank\", \"perKwh\": 0.1 } ], \"export\": [ { \"name\": \"paid\", \"perKwh\": 0 } ], \"curtailed\": [ { \"name\": \"held\", \"perKwh\": 0.03 } ], \"creditKept\": {}, \"creditLimits\": [ { \"name\": \"limit\", \"amount\": 9 } ]")),
        ("demand of every kind", Of($"{Import}, \"seasons\": [ {{ \"name\": \"winter\", \"from\": \"11-01\", \"until\": \"04-01\" }} ], \"demand\": [ {{ \"name\": \"all\", \"perKw\": 3, \"unit\": \"kVA\", \"kvaShare\": 0.9, \"minimumKw\": 2, \"ratchetShare\": 0.5, \"ratchetBills\": 5, \"ratchetSeason\": \"winter\", \"earlierKw\": 4, \"averagingMinutes\": 15, \"per\": \"bill\", \"eachMonth\": true, "
            + "\"when\": { \"season\": \"winter\", \"days\": [\"weekdays\"], \"hours\": [\"17:00-21:00\", \"07:00-08:00\"] } }, { \"name\": \"steps\", \"steps\": [ { \"upTo\": 3, \"price\": 1 }, { \"price\": 2 } ], \"per\": \"day\", \"eachDay\": true } ]")),
        ("holidays of a region and of its own", Of($"{Import}, \"holidaysOf\": {{ \"country\": \"DE\", \"region\": \"BY\" }}, \"holidays\": [\"2024-05-02\"]")),
        ("holidays of a country", Of($"{Import}, \"holidaysOf\": {{ \"country\": \"DE\" }}")),
        ("terms", Of($"{Import}, \"needs\": [\"solar\", \"battery\", \"smart meter\", \"electric car\", \"heat pump\", \"social support\"], \"closedToNew\": true, \"netWithinMinutes\": 60, \"energyAtChange\": \"by days\", \"buyAllSellAll\": true, \"tax\": 0.2, \"export\": [ {{ \"name\": \"paid\", \"perKwh\": 0.1 }} ], \"exportTax\": 0.1, \"exportLimitKw\": 5")),
        ("net metering", Of(Import + ", \"netMetering\": { \"settlesInMonth\": 3, \"cashOutPerKwh\": 0.04, \"expiresAfterMonths\": 12 }")),
        ("growth", $"{{ \"version\": 1, \"currency\": \"EUR\", \"growth\": {{ \"import\": 0.1, \"export\": -0.05, \"until\": \"2026-01-01\" }}, \"tariffs\": [ {{ \"name\": \"Grown\", \"from\": \"2024-01-01\", {Import}, \"export\": [ {{ \"name\": \"paid\", \"perKwh\": 0.10 }} ], \"supply\": {{ \"perDay\": 1 }} }} ] }}"));

    [Fact]
    public void What_it_may_not() => Check("tariff-mistakes",
        ("many at once, each by its place", Of("\"tax\": 7, \"seasons\": [ { \"name\": \"s\", \"from\": \"13-01\", \"until\": \"02-30\" } ], \"import\": [ { \"name\": \"a\", \"perKwh\": -1 }, { \"name\": \"b\", \"blocks\": [ { \"upToKwh\": 5, \"perKwh\": 0.1 }, { \"perKwh\": -0.1 } ] }, { \"name\": \"c\" }, "
            + "{ \"name\": \"d\", \"perKwh\": 1, \"blocks\": [ { \"perKwh\": 1 } ] }, { \"name\": \"e\", \"perKwh\": 1, \"when\": [ { \"days\": [\"holidays\"], \"hours\": [\"17:00-17:00\", \"25:00-26:00\"] } ] } ], \"demand\": [ { \"name\": \"f\" }, { \"name\": \"g\", \"perKw\": 1, \"steps\": [ { \"price\": 1 } ] } ], \"holidays\": [\"2024-02-30\"]")),
        ("no price", Of("\"supply\": { \"perDay\": 1 }")),
        ("a day that does not exist", "{ \"version\": 1, \"currency\": \"EUR\", \"tariffs\": [ { \"name\": \"A\", \"from\": \"2024-02-30\", " + Import + " } ] }"),
        ("two versions of one day, and a third that is wrong", $"{{ \"version\": 1, \"currency\": \"EUR\", \"tariffs\": [ {{ \"name\": \"A\", \"from\": \"2024-01-01\", {Import} }}, {{ \"name\": \"B\", \"from\": \"2024-01-01\", {Import} }}, {{ \"name\": \"C\", \"from\": \"2024-01-01\", \"import\": [] }} ] }}"),
        ("unknown names", $"{{ \"version\": 1, \"currency\": \"EUX\", \"zone\": \"Europe/Dublyn\", \"tariffs\": [ {{ \"name\": \"A\", \"from\": \"2024-01-01\", \"holidaysOf\": {{ \"country\": \"DE\", \"region\": \"XX\" }}, {Import} }} ] }}"),
        ("market prices without a clock", Of("\"importSeries\": { \"name\": \"spot\", \"file\": \"none.csv\" }, \"exportSeries\": { \"name\": \"sold\", \"file\": \"none.csv\" }")),
        ("a file of a later kind", $"{{ \"version\": 2, \"currency\": \"EUR\", \"tariffs\": [ {{ \"name\": \"A\", \"from\": \"2024-01-01\", {Import} }} ] }}"),
        ("no version, no currency", $"{{ \"tariffs\": [ {{ \"name\": \"A\", \"from\": \"2024-01-01\", {Import}, \"demand\": [ {{ }} ] }} ] }}"),
        ("a list at the top", "[ 1 ]"),
        ("no tariffs", "{ \"version\": 1, \"currency\": \"EUR\", \"tariffs\": [] }"),
        ("a version without its name beside one with a mistake", $"{{ \"version\": 1, \"currency\": \"EUR\", \"odd\": 1, \"tariffs\": [ {{ \"from\": \"2024-01-01\", {Import} }}, {{ \"name\": \"B\", \"from\": \"2024-06-01\", \"import\": [ {{ \"name\": \"use\", \"perKwh\": -1 }} ] }}, {{ \"name\": \"C\", {Import} }}, 5 ] }}"),
        ("an item that is none, beside a mistake in another", Of($"{Import}, \"fees\": [ 4, {{ \"name\": \"fee\", \"perDay\": \"x\" }} ], \"demand\": [ {{ \"name\": \"top\" }} ]")),
        ("demand, tiers, blocks and power factor out of order", Of("\"import\": [ { \"name\": \"use\", \"blocks\": [ { \"upToKwh\": 10, \"perKwh\": 1 }, { \"upToKwh\": 10, \"perKwh\": 1 }, { \"perKwh\": 1 } ] } ], \"importTiers\": { \"name\": \"tiers\", \"tiers\": [ { \"upToKwh\": 9, \"blocks\": [ { \"upToKwh\": 3, \"perKwh\": 1 } ] }, { \"blocks\": [ { \"perKwh\": 1 } ] } ] }, "
            + "\"demand\": [ { \"name\": \"top\", \"perKw\": 1, \"averagingMinutes\": 7, \"ratchetSeason\": \"none\" }, { \"name\": \"second\", \"steps\": [ { \"upTo\": 3, \"price\": 1 } ] } ], \"powerFactor\": { \"name\": \"factor\", \"least\": 0.9, \"fractionPerHundredth\": 0.01, \"of\": [\"nothing\"] }, \"supply\": { \"perDay\": 1 }")),
        ("blocks that cannot run on", Of("\"import\": [ { \"name\": \"use\", \"blocks\": [ { \"upToKwh\": 10, \"perKwh\": 1 }, { \"perKwh\": 1 } ], \"blocksRunOn\": true } ]")),
        ("hours that nobody prices, and hours priced twice", Of("\"import\": [ { \"name\": \"a\", \"perKwh\": 1, \"when\": [ { \"hours\": [\"00:00-10:00\"] } ] }, { \"name\": \"b\", \"perKwh\": 1, \"when\": [ { \"hours\": [\"09:00-20:00\"] } ] } ]")));

    [Fact]
    public void Market_prices_are_read_from_a_table_beside_it_and_its_mistakes_are_named()
    {
        var folder = TestFiles.NewFolder();
        string Tell(string prices)
        {
            File.WriteAllText(Path.Combine(folder, "market.csv"), prices);
            var path = Path.Combine(folder, "tariff.json");
            File.WriteAllText(path, "{ \"version\": 1, \"currency\": \"EUR\", \"zone\": \"Europe/Paris\", \"tariffs\": [ { \"name\": \"A\", \"from\": \"2024-01-01\", \"importSeries\": { \"name\": \"spot\", \"file\": \"market.csv\", \"factor\": 2 } } ] }");
            try
            {
                return string.Join(" ", TariffHistory.Load(path).Latest.Parts.OfType<SeriesPrice>().Select(s => FormattableString.Invariant($"{s.Name} {s.Prices.Name} {s.Prices.Count} {s.Prices.Start} {s.Prices.End} {s.Factor}")));
            }
            catch (RecordException refusal)
            {
                return refusal.Message.Replace(folder, "FOLDER", StringComparison.Ordinal).Replace('\\', '/');
            }
        }
        Assert.Equal("spot market.csv 3 2024-03-30T23:00:00Z 2024-03-31T02:00:00Z 2", Tell("start,price\n# a remark\n2024-03-31 00:00,0.1\n2024-03-31 01:00,0.2\n2024-03-31 03:00,0.3\n"));
        Assert.Equal("spot market.csv 2 2024-03-31T00:00:00Z 2024-03-31T02:00:00Z 2", Tell("2024-03-31T01:00:00+01:00,0.1\n2024-03-31T03:00+02:00,0.2\n"));
        Assert.Contains("prices that cannot be read (FOLDER/market.csv, line 3", Tell("start,price\n2024-03-30 00:00,0.1\n2024-03-29 00:00,0.2\n2024-03-30 01:00,much\n"), StringComparison.Ordinal);
        Assert.Contains("found quotes that are not closed, expected each field in two quotes or none", Tell("2024-03-30 00:00,0.1\n2024-03-30 01:00,\"0.2\n"), StringComparison.Ordinal);
        Assert.Contains("found no start after the one before with a price, expected such as 2024-03-01 17:00,0.2134", Tell($"2024-03-30 00:00,0.1\n{new string('x', 200)},1\n"), StringComparison.Ordinal);
        Assert.DoesNotContain(new string('x', 81), Tell($"2024-03-30 00:00,0.1\n{new string('x', 200)},1\n"), StringComparison.Ordinal);
        Assert.EndsWith("expected a table of start and price.", Tell("start,price\n2024-03-30 00:00,0.1\n"), StringComparison.Ordinal);
        File.Delete(Path.Combine(folder, "market.csv"));
        var missing = Assert.Throws<RecordException>(() => PriceSeries.Load(Path.Combine(folder, "market.csv"), NodaTime.DateTimeZone.Utc));
        Assert.Contains("expected a table of starts and prices", missing.Message, StringComparison.Ordinal);
    }

    private static string Of(string parts) => $"{{ \"version\": 1, \"currency\": \"EUR\", \"tariffs\": [ {{ \"name\": \"A\", \"from\": \"2024-01-01\", {parts} }} ] }}";

    private static void Check(string name, params IReadOnlyList<(string Title, string Text)> files) => WholeWords.Check(name, [.. files.Select(f => (f.Title, (IFinding)new ToldPlan(f.Text)))]);
}
