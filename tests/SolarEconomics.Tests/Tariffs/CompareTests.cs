using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

public sealed class CompareTests
{
    private static readonly DateTimeZone Utc = DateTimeZone.Utc;

    [Fact]
    public void Tariffs_are_ranked_by_their_bills_and_a_swinging_difference_is_a_tie()
    {
        // Year 1: 1,000 kWh by day, none by night. Year 2: 400 by day, 600 by night.
        // Flat 0.30: 300 a year. Timed, day 0.40 and night 0.10: 400, then 220. Dear, 0.50: 500 a year.
        var answer = new CompareRequest(Choices, Years((1000, 0), (400, 600)), Utc).Answer();
        Assert.Equal([("flat", 600m, 0m, true), ("timed", 620m, 20m, true), ("dear", 1000m, 400m, false)],
            answer.Ranks.Select(r => (r.Name, r.Total.Amount, r.Difference.Amount, r.Tie)));
        // Chosen on year 1: flat, which costs 300 in year 2 where timed costs 220.
        Assert.Equal(new ChoiceRegret(2, "flat", "timed", Money.Nominal(80m, Currency.Of("EUR"))), Assert.Single(answer.Regrets));
        Assert.Contains("\"tariff\": \"flat\"", answer.ToJson(), StringComparison.Ordinal);
        Assert.Contains("\"total\": \"600.00\"", answer.ToJson(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_comparison_says_the_tie_the_regret_and_lists_all()
    {
        var said = new CompareRequest(Choices, Years((1000, 0), (400, 600)), Utc).Answer().Say(System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(("flat", "is the cheapest on these readings, but ties with timed: they differ by no more than the difference swings from year to year."), (said.Figure, said.Words));
        Assert.Contains("Chosen on year 1, flat costs €80.00 more than the best in year 2, timed.", said.Notes);
        Assert.Contains("A tie: the mean yearly difference is no larger than its range over the years.", said.Notes);
        Assert.Equal(["tariff", "total", "difference", "tie", "remark"], said.Tables[0].Columns);
        Assert.Equal([["flat", "€600.00", "€0.00", "tie", ""], ["timed", "€620.00", "€20.00", "tie", ""], ["dear", "€1,000.00", "€400.00", "", ""]], said.Tables[0].Rows);
        Assert.Equal([Bill.Caution], said.Cautions);
        var year = new CompareRequest(Choices, Years((1000, 0)), Utc).Answer().Say(System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal("is the cheapest on these readings: €100.00 less than timed.", year.Words);
        var only = new CompareRequest([Choices[0]], Years((1000, 0)), Utc).Answer().Say(System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(("dear", "is the only tariff given."), (only.Figure, only.Words));
    }

    [Fact]
    public void Without_all_readings_there_are_no_ranks_until_it_is_an_estimate()
    {
        var ask = new CompareRequest(Choices, Years((1000, 0)), Utc) with { From = new LocalDate(2021, 1, 1), To = new LocalDate(2023, 1, 1) };
        var open = ask.Answer();
        Assert.Equal("no ranks", open.Say(System.Globalization.CultureInfo.InvariantCulture).Figure);
        Assert.StartsWith("The readings cover 50.0 % of ", open.Say(System.Globalization.CultureInfo.InvariantCulture).Words.Replace("\u00a0", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("\"total\": null", open.ToJson(), StringComparison.Ordinal);
        Assert.Contains("\"tie\": false", open.ToJson(), StringComparison.Ordinal);
        var estimate = (ask with { EstimateWhereMissing = true }).Answer().Say(System.Globalization.CultureInfo.InvariantCulture);
        Assert.Contains(estimate.Notes, n => n.StartsWith("An estimate: the readings cover 50.0", StringComparison.Ordinal));
    }

    [Fact]
    public void One_year_cannot_tell_a_tie()
    {
        var answer = new CompareRequest(Choices, Years((1000, 0)), Utc).Answer();
        Assert.Equal([("flat", false), ("timed", false), ("dear", false)], answer.Ranks.Select(r => (r.Name, r.Tie)));
        Assert.Contains(answer.Say(System.Globalization.CultureInfo.InvariantCulture).Notes, n => n.StartsWith("Less than two whole years"));
    }

    [Fact]
    public void Costs_before_rounding_are_the_bills_without_rounding() => Gen.Select(RandomTariff.Timed, RandomTariff.Kwh(48 * 60), RandomTariff.Kwh(48 * 60)).Sample((tariff, import, export) =>
    {
        var grid = new IntervalGrid(Instant.FromUtc(2024, 2, 10, 0, 0), Duration.FromMinutes(30), 48 * 60);
        var plan = TariffHistory.Of(tariff.Rounded(RoundingMode.HalfUp, RoundingPlace.Nowhere)).On(grid, DateTimeZoneProviders.Tzdb["Europe/Dublin"]);
        var costs = plan.CostsBeforeRounding(import, export);
        var bills = plan.Bills(import, export);
        for (var i = 0; i < costs.Length; i++) Assert.Equal(0, ((double)bills[i].Total.Amount - costs[i]) / Math.Max(1, Math.Abs(costs[i])), 5e-10);
    }, iter: 60);

    [Fact]
    public void Wide_look_ups_agree_with_plain_ones() => Gen.Select(Gen.Double[0, 5].Array[0, 100], Gen.Double[0, 1].Array[1, 8], Gen.Int[0, 1000]).Sample((kwh, rates, seed) =>
    {
        var bands = kwh.Select((_, i) => (byte)((i * 7 + seed) % rates.Length)).ToArray();
        Assert.Equal(BandCosts.SumPlain(kwh, bands, rates), BandCosts.Sum(kwh, bands, rates), 5e-10);
        if (System.Runtime.Intrinsics.X86.Avx2.IsSupported)
            Assert.Equal(BandCosts.SumPlain(kwh, bands, rates), BandCosts.SumHalfWide(kwh, bands, rates), 5e-10);
    });

    [Fact]
    public void Tariffs_of_two_currencies_are_refused_in_words_of_a_comparison()
    {
        var choices = new[] { new TariffChoice("home", TariffHistory.Of(Tariff.Flat("A", "EUR", 0.30m))), new TariffChoice("abroad", TariffHistory.Of(Tariff.Flat("B", "GBP", 0.30m))) };
        Assert.StartsWith("Found EUR in \"home\" and GBP in \"abroad\", expected tariffs of one currency to compare.",
            Assert.Throws<TariffException>(() => new CompareRequest(choices, Years((1, 1)), Utc).Answer()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tariff_in_blocks_is_refused_where_only_hours_are_priced()
    {
        var blocks = new RateBlocks([new RateBlock(10, 0.20m), new RateBlock(null, 0.30m)]);
        var tariff = OneBill.Empty() with { Parts = [new EnergyPart("import", EnergySide.Import, [EnergyRate.InBlocks("import", blocks)])] };
        var plan = TariffHistory.Of(tariff).On(new IntervalGrid(Instant.FromUtc(2024, 1, 1, 0, 0), Duration.FromHours(1), 24), Utc);
        Assert.False(plan.IsPricedByTheHour);
        Assert.Throws<InvalidOperationException>(() => plan.CostsBeforeRounding(new double[24], new double[24]));
    }

    private static IReadOnlyList<TariffChoice> Choices =>
    [
        new("dear", TariffHistory.Of(Tariff.Flat("Dear", "EUR", 0.50m))),
        new("timed", TariffHistory.Of(Tariff.Named("Timed", "EUR", new LocalDate(2020, 1, 1)).Import("day", 0.40m, hours: "06:00-18:00").Import("night", 0.10m))),
        new("flat", TariffHistory.Of(Tariff.Flat("Flat", "EUR", 0.30m))),
    ];

    /// <summary>One reading at noon and one at midnight of each year's first day, zero else.</summary>
    private static Readings Years(params (double Day, double Night)[] years)
    {
        var start = Instant.FromUtc(2021, 1, 1, 0, 0);
        var count = 365 * 24 * years.Length;
        var kwh = new double[count];
        for (var y = 0; y < years.Length; y++)
        {
            kwh[y * 365 * 24] = years[y].Night;
            kwh[(y * 365 * 24) + 12] = years[y].Day;
        }
        Instant[] starts = [.. Enumerable.Range(0, count).Select(i => start + Duration.FromHours(i))];
        Instant[] ends = [.. starts.Select(s => s + Duration.FromHours(1))];
        return new Readings([new Channel("import", FlowKind.Import, starts, ends, kwh, new Quality[count])], [], []);
    }
}
