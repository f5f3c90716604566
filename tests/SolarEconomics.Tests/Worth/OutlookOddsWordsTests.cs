using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>What-ifs, odds, options and waiting of one invented home, word for word, on few draws; and what they refuse.</summary>
public sealed class OutlookOddsWordsTests
{
    private static readonly DrawOptions s_few = new() { MostDraws = 120, Seed = 5 };
    private static readonly Outlook s_outlook = YearSite.Worth().Outlook(YearSite.Plain with
    {
        DiscountRate = 0.05, PriceGrowth = 0.02, RunningCostsPerYear = 12, WearingParts = [new WearingPart("fan", 40, WeibullDistribution.OfMean(7, 2.5), YearSite.First)],
    });

    private static readonly SwapOption s_swap = new("twice the modules", new PanelSwap("roof", NewKwp: 4, Cost: 700, On: new LocalDate(2024, 1, 1)));
    private static readonly SwapOption s_more = new("three times the modules", new PanelSwap("roof", NewKwp: 6, Cost: 1_350, On: new LocalDate(2024, 1, 1)));
    private static readonly SwapOption s_given = new("modules for nothing", new PanelSwap("roof", NewKwp: 2.2, Cost: 0, On: new LocalDate(2024, 1, 1)));

    private static readonly Uncertainties s_open = new()
    {
        Inputs = [OutlookInput.PriceGrowth.Is(new NormalDistribution(0.02, 0.01)), OutlookInput.FeedInGrowth.Is(new NormalDistribution(-0.01, 0.02)), OutlookInput.AgeingPerYear.Is(new NormalDistribution(0.001, 0.002))],
        Pairs = [new CorrelatedPair("import price growth", "feed-in price growth", 0.4)], WeatherSd = 0.05,
    };

    [Fact]
    public void What_if() => WholeWords.Check("outlook-what-if",
        ("a tornado", s_outlook.Tornado([OutlookInput.PriceGrowth.Between(-0.02, 0.05), OutlookInput.RunningCostsPerYear.Between(0, 40), OutlookInput.YieldFactor.Between(0.9, 1.1)])),
        ("of the position", s_outlook.Tornado([OutlookInput.ResidualValue.Between(-100, 200)], OutlookMeasure.PositionAtHorizon)),
        ("a grid", s_outlook.Grid(OutlookInput.PriceGrowth.Between(-0.02, 0.05), OutlookInput.DiscountRate.Between(0, 0.1), 3)),
        ("a grid of the position", s_outlook.Grid(OutlookInput.PriceGrowth.Between(-0.02, 0.05), OutlookInput.YieldFactor.Between(0.8, 1.2), 2, OutlookMeasure.PositionAtHorizon)),
        ("a break-even", s_outlook.BreakEven(OutlookInput.YieldFactor.Between(0.1, 2))), ("one above 0 all along", s_outlook.BreakEven(OutlookInput.YieldFactor.Between(1, 2))),
        ("one below 0 all along", s_outlook.BreakEven(OutlookInput.YieldFactor.Between(0, 0.3))), ("of the position", s_outlook.BreakEven(OutlookInput.RunningCostsPerYear.Between(0, 400), OutlookMeasure.PositionAtHorizon)),
        ("a line", s_outlook.BreakEvenLine(OutlookInput.DiscountRate.Between(0, 0.3), OutlookInput.YieldFactor.Between(0.5, 1.5), 4)),
        ("a line of the position", s_outlook.BreakEvenLine(OutlookInput.RunningCostsPerYear.Between(0, 300), OutlookInput.YieldFactor.Between(0.5, 1.5), 4, OutlookMeasure.PositionAtHorizon)));

    [Fact]
    public void How_sure() => WholeWords.Check("outlook-odds",
        ("the outlook", s_outlook.HowSure(s_open, s_few)), ("its position", s_outlook.HowSure(s_open, s_few).PositionAtHorizon), ("without weather and pairs", s_outlook.HowSure(s_open with { Pairs = [], WeatherSd = 0 }, s_few)),
        ("only what fails by odds", s_outlook.HowSure(new Uncertainties { WeatherSd = 0 }, s_few)), ("an option", s_outlook.HowSure(s_swap, s_open, s_few)),
        ("options compared", s_outlook.Compare(s_swap, s_more, s_given)), ("one option", s_outlook.Compare(s_more)),
        ("waiting two years", s_outlook.Waiting(s_swap, 2, s_open, new WaitingOptions { PriceFallPerYear = new NormalDistribution(0.05, 0.02), Known = [OutlookInput.PriceGrowth] }, s_few)),
        ("waiting, price known", s_outlook.Waiting(s_more, 1, s_open, new WaitingOptions { PriceFallPerYear = Certain.Of(0.04) }, s_few)));

    [Fact]
    public void The_name_of_what_is_drawn_and_nothing_else_tells_its_draws_apart()
    {
        // Failures of another name, and falls of another option's price, are other draws.
        var pump = s_outlook.With(s_outlook.Assumptions with { WearingParts = [s_outlook.Assumptions.WearingParts[0] with { Part = "pump" }] });
        var alone = new Uncertainties { WeatherSd = 0 };
        Assert.NotEqual(s_outlook.HowSure(alone, s_few).Npv.Values.Values.ToArray(), pump.HowSure(alone, s_few).Npv.Values.Values.ToArray());
        var falling = new WaitingOptions { PriceFallPerYear = new NormalDistribution(0.05, 0.02) };
        Assert.NotEqual(s_outlook.Waiting(s_swap, 2, alone, falling, s_few).Later.Values.Values.ToArray(), s_outlook.Waiting(s_swap with { Name = "other" }, 2, alone, falling, s_few).Later.Values.Values.ToArray());
        // A fall beyond half a year's price either way is held there.
        WaitingWorth At(double fall) => s_outlook.Waiting(s_swap, 1, alone, new WaitingOptions { PriceFallPerYear = Certain.Of(fall) }, s_few);
        Assert.Equal(At(0.5).Later.Values.Mean, At(0.9).Later.Values.Mean, 9);
        Assert.Equal(At(-0.5).Later.Values.Mean, At(-0.9).Later.Values.Mean, 9);
        Assert.NotEqual(At(-0.5).Later.Values.Mean, At(0.5).Later.Values.Mean, 0);
    }

    [Fact]
    public void Weather_of_each_year_is_drawn_for_options_up_to_the_horizon()
    {
        var weather = new Uncertainties { WeatherSd = 0.05 };
        var now = s_outlook.Waiting(s_swap, 2, weather, null, s_few).Now.Values;
        Assert.Equal(s_outlook.HowSure(s_swap, weather, s_few).Values.Values.ToArray(), now.Values.ToArray());
        Assert.InRange(now.Sd, 5, 60);
    }

    [Fact]
    public void What_cannot_be_asked_is_refused_by_name()
    {
        var (price, rate) = (OutlookInput.PriceGrowth.Between(0, 0.1), OutlookInput.DiscountRate.Between(0, 0.1));
        Assert.StartsWith("Found no ", Message(() => s_outlook.Tornado([])), StringComparison.Ordinal);
        Assert.Contains("rows and columns", Message(() => s_outlook.Grid(price, rate, 1)), StringComparison.Ordinal);
        Assert.Contains("rows and columns", Message(() => s_outlook.Grid(price, rate, 102)), StringComparison.Ordinal);
        Assert.Contains("steps", Message(() => s_outlook.BreakEvenLine(price, rate, 1)), StringComparison.Ordinal);
        Assert.Contains("draws of an outlook", Message(() => s_outlook.HowSure(s_open, s_few with { MostDraws = 5_000_001 })), StringComparison.Ordinal);
        Assert.ThrowsAny<ArgumentException>(() => s_outlook.HowSure(s_swap, s_open with { WeatherSd = -1 }, s_few));
        Assert.ThrowsAny<ArgumentException>(() => s_outlook.Waiting(s_swap, 2, s_open with { WeatherSd = -1 }, null, s_few));
        foreach (var ask in new Action[] { () => s_outlook.Grid(null!, rate), () => s_outlook.Grid(price, null!), () => s_outlook.BreakEvenLine(null!, rate), () => s_outlook.BreakEvenLine(price, null!), () => s_outlook.HowSure(s_swap, null!), () => s_outlook.Waiting(s_swap, 2, null!) })
            Assert.Throws<ArgumentNullException>(ask);
        static string Message(Action ask) => Assert.ThrowsAny<ArgumentException>(ask).Message;
    }

    [Fact]
    public void Long_work_tells_each_share_and_stops_where_it_is_told_to()
    {
        var (price, rate) = (OutlookInput.PriceGrowth.Between(0, 0.1), OutlookInput.DiscountRate.Between(0, 0.1));
        var shares = new List<double>();
        using (WorkProgress.Around(new WorkListener(new Shares(shares.Add))))
        {
            s_outlook.Tornado([price, rate]);
            s_outlook.Grid(price, rate, 2);
            s_outlook.BreakEvenLine(rate, OutlookInput.YieldFactor.Between(0.5, 1.5), 2);
        }
        Assert.All(shares, s => Assert.InRange(s, 0, 1));
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        foreach (var ask in new Action[] { () => s_outlook.Tornado([price], cancel: stopped.Token), () => s_outlook.Grid(price, rate, cancel: stopped.Token), () => s_outlook.BreakEvenLine(price, rate, cancel: stopped.Token) })
            Assert.ThrowsAny<OperationCanceledException>(ask);
    }

    [Fact]
    public void Years_at_the_edges_of_an_outlook()
    {
        var worth = YearSite.Worth();
        // A part falls due on the first day after the records, not before it, and not on the horizon.
        Outlook With(double year) => worth.Outlook(YearSite.Plain with { Replacements = [new Replacement("part", year, 100)] });
        Assert.Equal(-100m, With(365 / 365.25).YearsAhead[1].Replacement.Amount);
        Assert.Equal(0m, With(364 / 365.25).YearsAhead.Sum(y => y.Replacement.Amount));
        Assert.Equal(-100m, With(7304 / 365.25).YearsAhead[^1].Replacement.Amount);
        Assert.Equal(0m, With(7305 / 365.25).YearsAhead.Sum(y => y.Replacement.Amount));
        // What the ledger has of loans and without money moves nothing of the project.
        var plain = worth.Outlook(YearSite.Plain).PositionAtHorizon;
        Assert.Equal(plain, YearSite.Worth(1_000m, Entry(LedgerKind.Finance), Entry(LedgerKind.WarrantyRefused)).Outlook(YearSite.Plain).PositionAtHorizon);
        // Less than a year on record is said; stated running costs hold own hours only if they were put in.
        var day = Worth.ToDate(SmallSite.Site(new Device("roof", MeasurementPoint.InverterAcOut)), SmallSite.Of(SmallSite.Hours("roof", FlowKind.Generation, (12, 1)), SmallSite.Hours("import", FlowKind.Import, (20, 1)), SmallSite.Hours("export", FlowKind.Export)),
            SmallSite.Flat(0.30m, 0.10m), Ledger.From(new LedgerEntry(SmallSite.Day, LedgerKind.Purchase, Money.Nominal(100, Currency.Of("EUR"))) { OwnHours = 2 }));
        Assert.Equal("Less than a year is on record: months without records take the mean of those there are.", day.Outlook(YearSite.Plain).Say(CultureInfo.InvariantCulture).Notes[^1]);
        Assert.Contains(day.WithOwnHours(Money.Nominal(10, Currency.Of("EUR"))).Outlook(YearSite.Plain with { RunningCostsPerYear = 5 }).Say(CultureInfo.InvariantCulture).Notes,
            n => n.StartsWith("Own hours count at €10.00 each; those ahead are in the stated running costs if they were put in. ", StringComparison.Ordinal));
        static LedgerEntry Entry(LedgerKind kind) => new(new LocalDate(2023, 5, 1), kind, Money.Nominal(77, Currency.Of("EUR")));
    }

    [Fact]
    public void The_modules_age_is_that_of_the_devices_in_service_by_their_power()
    {
        // 3 kWp since 2013 and 1 kWp since 2021; one out of service, one without power and one without a day count for nothing.
        Device Roof(double kwp, int? year, int? until = null) => new($"roof {kwp} {year} {until}", MeasurementPoint.InverterAcOut)
        {
            RatedKwp = kwp, InService = year is { } y ? new LocalDate(y, 1, 1) : null, OutOfService = until is { } u ? new LocalDate(u, 1, 1) : null,
        };
        double AgeOf(params Device[] devices) => Worth.ToDate(YearSite.Place with { Plant = new Plant(devices) }, YearSite.Records(), YearSite.Tariffs, YearSite.Paid(1_000)).ForOutlooks.AgeAt(new LocalDate(2024, 1, 1));
        Assert.Equal(((3 * 4017) + 1095) / 4.0 / 365.25, AgeOf(Roof(3, 2013), Roof(1, 2021), Roof(9, 2001, 2020), Roof(0, 1999), Roof(7, null)), 9);
        Assert.Equal(365 / 365.25, AgeOf(Roof(7, null)), 9); // from the first purchase
        Assert.Equal(0, AgeOf(Roof(7, 2030)), 9);
    }

    [Fact]
    public void The_owner_s_words_for_what_does_not_come_back_and_for_loans_of_the_ledger()
    {
        var euro = Currency.Of("EUR");
        var dear = new LoanTaken("bank", new Loan(Money.Nominal(400, euro), 0.01, 48) { PaymentsPerYear = 4 }, YearSite.First);
        var worth = YearSite.Worth(9_000m, new LedgerEntry(YearSite.First, LedgerKind.LoanReceived, Money.Nominal(100, euro)), new LedgerEntry(new LocalDate(2024, 5, 1), LedgerKind.Finance, Money.Nominal(110, euro)));
        WholeWords.Check("owner", ("not back within the horizon", worth.Outlook(YearSite.Plain with { Loans = [dear, dear with { Name = "friend" }] }).Owner!), ("loans of the ledger alone", worth.Outlook(YearSite.Plain).Owner!));
    }

    private sealed class Shares(Action<double> told) : IProgress<double>
    {
        public void Report(double value) => told(value);
    }
}
