using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Long work stops soon after it is told to: counted in pieces of work, as a time on a busy machine says nothing.</summary>
public sealed class StoppingTests
{
    private static readonly Outlook Outlook = YearSite.Worth().Outlook(YearSite.Plain);

    [Fact]
    public void On_one_thread_no_further_chunk_of_draws_is_begun()
    {
        using var stop = new CancellationTokenSource();
        var begun = 0;
        var told = new Told(done => { if (done >= 0.02) stop.Cancel(); });
        Assert.Throws<OperationCanceledException>(() => DrawRun.Take(new DrawOptions { MostDraws = 1_024_000, Threads = 1 }, (_, _) => begun++, [], told, stop.Token));
        Assert.Equal(20, begun);
    }

    [Fact]
    public void On_several_threads_each_may_end_the_chunk_it_has_begun()
    {
        const int Threads = 4;
        using var stop = new CancellationTokenSource();
        var begun = 0;
        void Fill(int first, int count)
        {
            if (Interlocked.Increment(ref begun) == 20) stop.Cancel();
        }
        Assert.ThrowsAny<OperationCanceledException>(() => DrawRun.Take(new DrawOptions { MostDraws = 1_024_000, Threads = Threads }, Fill, [], null, stop.Token));
        Assert.InRange(begun, 20, 20 + (2 * Threads));
    }

    [Fact]
    public void An_outlook_over_a_million_draws_and_an_option_stop_at_the_chunk_in_which_they_are_told()
    {
        var open = new Uncertainties { Inputs = [OutlookInput.PriceGrowth.Is(new NormalDistribution(0.02, 0.01))] };
        Assert.Equal(1, ReportsUntilStopped((told, stop) => Outlook.HowSure(open, new DrawOptions { MostDraws = 1_000_000, Threads = 1 }, told, stop)));
        var option = new SwapOption("more", new PanelSwap("roof", NewKwp: 4, Cost: 300, On: new LocalDate(2024, 1, 1)));
        Assert.Equal(1, ReportsUntilStopped((told, stop) => Outlook.HowSure(option, open, new DrawOptions { MostDraws = 100_000, Threads = 1 }, told, stop)));
        Assert.Equal(1, ReportsUntilStopped((told, stop) => Outlook.Waiting(option, 2, open, null, new DrawOptions { MostDraws = 100_000, Threads = 1 }, told, stop)));
    }

    [Fact]
    public void A_tornado_stops_after_the_bar_it_is_at() =>
        Assert.Equal(1, ReportsUntilStopped((told, stop) => Outlook.Tornado([OutlookInput.PriceGrowth.Between(0, 0.05), OutlookInput.FeedInGrowth.Between(0, 0.05), OutlookInput.DiscountRate.Between(0, 0.05)], null, told, stop)));

    [Fact]
    public void A_sweep_of_batteries_stops_after_the_handful_of_cases_it_is_at()
    {
        var sweep = BatterySweep.OfAnySpan(new Conditions(LoadSeries.Of(Made.HoursOf(48), new double[48])));
        var cases = Enumerable.Range(0, 4_096).Select(k => new BatteryCase(new Battery { UsableKwh = k / 100.0 })).ToList();
        Assert.Equal(1, ReportsUntilStopped((told, stop) => sweep.Run(cases, 25, told, stop)));
    }

    [Fact]
    public void A_run_of_the_flow_model_asks_its_control_at_most_a_thousand_times_more()
    {
        using var stop = new CancellationTokenSource();
        var asked = 0;
        var control = Control.Of("stops", now =>
        {
            if (++asked == 100) stop.Cancel();
            return now.StoreOrCover();
        });
        var conditions = new Conditions(LoadSeries.Of(Timeline.Year(2025, Duration.FromHours(1), Made.Dublin), new double[8760]));
        Assert.Throws<OperationCanceledException>(() => new EnergySystem().Run(conditions, control, null, stop.Token));
        Assert.Equal(1024, asked);
        // Year after year the same holds: the stop falls into the second year.
        using var later = new CancellationTokenSource();
        var asks = 0;
        var counts = Control.Of("stops later", now =>
        {
            if (++asks == 8760 + 100) later.Cancel();
            return now.StoreOrCover();
        });
        Assert.Throws<OperationCanceledException>(() => new EnergySystem().RunYears(conditions, counts, new YearsAhead(40), null, later.Token));
        Assert.Equal(8760 + 1024, asks);
    }

    /// <summary>Stops work at its first report of progress and counts how many reports came in all.</summary>
    private static int ReportsUntilStopped(Action<IProgress<double>, CancellationToken> work)
    {
        using var stop = new CancellationTokenSource();
        var reports = 0;
        var told = new Told(_ =>
        {
            reports++;
            stop.Cancel();
        });
        Assert.ThrowsAny<OperationCanceledException>(() => work(told, stop.Token));
        return reports;
    }

    /// <summary>Progress that is told at once, on the thread that works.</summary>
    private sealed class Told(Action<double> tell) : IProgress<double>
    {
        public void Report(double value) => tell(value);
    }
}
