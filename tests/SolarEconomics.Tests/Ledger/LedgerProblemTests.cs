using CsCheck;

namespace SolarEconomics.Tests;

/// <summary>Every bad ledger gives one clear message, word for word.</summary>
public sealed class LedgerProblemTests
{
    private const string Heading = "date,kind,amount,currency,device,description\n";

    [Fact]
    public void A_missing_file_is_named_with_the_place_looked_at()
    {
        var path = Path.Combine(Path.GetTempPath(), "no-such-ledger.csv");
        Assert.Equal($"{path}: found no such file, expected a ledger (CSV). Looked for it as {path}.",
            Assert.Throws<RecordException>(() => Ledger.Load(path)).Message);
    }

    [Theory]
    [InlineData("")]
    [InlineData("# only a remark\n")]
    [InlineData(Heading)]
    [InlineData("\n\n")]
    public void An_empty_ledger_is_refused(string text) => Refused(text,
        "ledger.csv: found no entries, expected a heading line such as date,kind,amount,currency,device,description and a line for each payment.");

    [Fact]
    public void A_missing_column_names_the_nearest_headings() => Refused("date,type,amount,curency\n2022-01-01,purchase,1,EUR\n",
        "ledger.csv: found no column \"kind\", \"currency\" in the heading \"date,type,amount,curency\", expected date,kind,amount,currency,device,description. " +
        "Rename the column (nearest to \"kind\": date, type, amount; nearest to \"currency\": curency, amount, date).");

    [Fact]
    public void An_unparsable_number_is_named_with_line_and_column() => Refused(Heading + "2022-01-01,purchase,\"1.234,50\",EUR,,\n",
        "ledger.csv, line 2, column 3: found amount \"1.234,50\", expected a number with a point and no other marks, such as 1234.50.");

    [Fact]
    public void An_unknown_currency_names_the_nearest_codes() => Refused(Heading + "2022-01-01,purchase,100,EUX,,\n",
        "ledger.csv, line 2, column 4: found currency \"EUX\", expected a currency code of ISO 4217; nearest are EUR, AUD, CUP.");

    [Fact]
    public void An_unknown_kind_names_the_nearest_kinds() => Refused(Heading + "2022-01-01,purchas,100,EUR,,\n",
        "ledger.csv, line 2, column 2: found kind \"purchas\", expected a kind; nearest are purchase, part, permit.");

    [Fact]
    public void A_date_that_is_none_is_refused() => Refused(Heading + "2022-02-30,purchase,100,EUR,,\n",
        "ledger.csv, line 2, column 1: found date \"2022-02-30\", expected a day written as 2024-03-31.");

    [Fact]
    public void A_negative_amount_is_asked_back() => Refused(Heading + "2022-02-03,purchase,-100,EUR,,\n",
        "ledger.csv, line 2, column 3: found amount \"-100\", expected 0 or more: the kind says which way money went, and money back is kind refund or sale.");

    [Theory]
    [InlineData("1000000000001")]
    [InlineData("99999999999999999999999999999")] // the largest decimal is 7.9e28
    [InlineData("1000000000000000000000000000000000000000")]
    public void An_amount_beyond_money_is_asked_back_for_its_size_not_its_form(string amount)
    {
        Refused(Heading + $"2022-02-03,purchase,{amount},EUR,,\n",
            $"ledger.csv, line 2, column 3: found amount \"{amount}\", expected at most 1,000,000,000,000: check the digits, sums of such amounts are no money.");
        Refused("date,kind,amount,currency,market price\n" + $"2022-02-03,purchase,1,EUR,{amount}\n",
            $"ledger.csv, line 2, column 5: found market price \"{amount}\", expected at most 1,000,000,000,000: check the digits, sums of such amounts are no money.");
        Refused(Heading + $"2022-02-03,purchase,-{amount},EUR,,\n",
            $"ledger.csv, line 2, column 3: found amount \"-{amount}\", expected 0 or more: the kind says which way money went, and money back is kind refund or sale.");
    }

    [Fact]
    public void An_amount_beyond_money_is_refused_in_code_too()
    {
        var good = new LedgerEntry(new(2022, 2, 3), LedgerKind.Purchase, Money.Nominal(1e12m, Currency.Of("EUR")));
        Assert.Equal(-1e12m, Ledger.From(good).CashFlows().Total.Amount);
        var large = Money.Nominal(1e12m + 1, Currency.Of("EUR"));
        foreach (var bad in new[] { good with { Amount = large }, good with { MarketPrice = large } })
        {
            Assert.StartsWith("Found 1,000,000,000,001.00 EUR for purchase on 2022-02-03, expected at most 1,000,000,000,000: check the digits, sums of such amounts are no money.",
                Assert.Throws<ArgumentOutOfRangeException>(() => Ledger.From(bad)).Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_ledger_without_a_purchase_is_refused() => Refused(Heading + "2022-02-03,repair,100,EUR,,\n",
        "ledger.csv: found only repair, expected at least one entry of kind purchase: payback is counted from the day the first one was paid.");

    [Fact]
    public void Thousands_marks_without_quotes_are_seen_as_a_field_too_many()
    {
        var refused = Assert.Throws<RecordException>(() => Read("date,kind,amount,currency\n2022-01-01,purchase,1,234.50,EUR\n"));
        Assert.Equal("ledger.csv, line 2: found 5 fields, expected 4 as in the heading: a number is written without thousands marks, and text with a comma stands in quotes",
            refused.Problems[0].ToString());
    }

    [Fact]
    public void Quotes_that_do_not_pair_are_named() =>
        Assert.StartsWith("ledger.csv, line 2: found quotes that do not pair",
            Assert.Throws<RecordException>(() => Read(Heading + "2022-01-01,purchase,100,EUR,,\"modules\n")).Message);

    [Fact]
    public void Every_problem_is_listed_and_nothing_is_left_out_quietly()
    {
        var refused = Assert.Throws<RecordException>(() => Read(Heading + "2022-01-01,purchase,100,EUR,,\nsoon,purchase,x,EUR,,\n2022-01-03,prize,1,EUR,,\n"));
        Assert.Equal([3, 3, 4], refused.Problems.Select(p => p.Line));
        Assert.Equal(["soon", "x", "prize"], refused.Problems.Select(p => p.Raw));
        Assert.StartsWith("Found 3 entries or fields of the ledger that cannot be read, expected none. Put these right first:\n", refused.Message);
    }

    [Fact]
    public void A_repeating_entry_needs_an_end() => Refused("date,kind,amount,currency,every,until\n2022-01-31,insurance,60,EUR,month,\n",
        "ledger.csv, line 2, column 6: found until nothing, expected the first day that no longer counts, after the date and within 100 years, such as 2034-03-31.");

    [Fact]
    public void Two_currencies_are_named_with_their_lines()
    {
        var ledger = Read(Heading + "2022-01-01,purchase,100,EUR,,\n2022-01-02,repair,100,GBP,,\n");
        Assert.Equal("Found EUR (ledger.csv, line 2) together with GBP (ledger.csv, line 3), expected one currency. " +
            "Enter each payment in the currency of the site, at the rate of its day.", Assert.Throws<MixedMoneyException>(() => ledger.CashFlows()).Message);
    }

    [Fact]
    public void A_column_that_is_not_used_is_noted() =>
        Assert.Equal("ledger.csv, column 5: found a column \"shop\", expected one of date, kind, amount, currency, device, description, own hours, market price, every, until; the column is not used",
            Assert.Single(Read("date,kind,amount,currency,shop\n2022-01-01,purchase,1,EUR,x\n").Notes).ToString());

    [Fact]
    public void A_message_never_shows_the_owners_words()
    {
        var refused = Assert.Throws<RecordException>(() => Read(Heading + "2022-01-01,purchase,lots,EUR,roof,from Uncle Secret\n"));
        Assert.DoesNotContain("Secret", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Any_text_is_read_or_refused_in_words_and_nothing_else() =>
        Gen.Char["date,kndamoutcry\n\"#;0123456789-. purchseERU\t\u00e9"].Array[0, 200].Sample(chars =>
        {
            try
            {
                Read((chars.Length % 2 == 0 ? Heading : "") + new string(chars));
            }
            catch (RecordException refused)
            {
                Assert.StartsWith(refused.Problems.Count > 1 ? "Found " : "ledger.csv", refused.Message);
            }
        });

    private static void Refused(string text, string message) => Assert.Equal(message, Assert.Throws<RecordException>(() => Read(text)).Message);

    private static Ledger Read(string text) => Ledger.Read(new StringReader(text), "ledger.csv");
}
