using System.Globalization;

namespace SolarEconomics.Tests;

/// <summary>Long work gives a first answer to whoever waits around it: once, marked, and only where somebody waits and it takes long.</summary>
public sealed class PreviewTests
{
    private readonly List<IFinding> told = [];

    private WorkListener Listener => new(null) { Preview = told.Add };

    [Fact]
    public void Work_that_is_over_at_once_wants_no_preview()
    {
        using (WorkProgress.Around(Listener))
        using (var work = WorkProgress.Begin()) Assert.False(work.WantsPreview(0.999));
    }

    [Fact]
    public void Slow_work_wants_one_preview_and_a_second_is_not_told()
    {
        using (WorkProgress.Around(Listener))
        using (var work = WorkProgress.Begin())
        {
            Thread.Sleep(5);
            // At this pace the whole would take some fifty seconds.
            Assert.True(work.WantsPreview(0.0001));
            work.TellPreview(Odds());
            Assert.False(work.WantsPreview(0.0001));
            work.TellPreview(Odds());
        }
        Assert.Single(told);
    }

    [Fact]
    public void Inner_work_and_work_that_nobody_waits_for_want_none()
    {
        using (var alone = WorkProgress.Begin())
        {
            Thread.Sleep(5);
            Assert.False(alone.WantsPreview(0.0001));
        }
        using (WorkProgress.Around(Listener))
        using (WorkProgress.Begin())
        using (var inner = WorkProgress.Begin())
        {
            Thread.Sleep(5);
            Assert.False(inner.WantsPreview(0.0001));
            inner.TellPreview(Odds());
        }
        Assert.Empty(told);
    }

    [Fact]
    public void A_stop_from_around_ends_work_and_what_is_inside_it()
    {
        using var stop = new CancellationTokenSource();
        using (WorkProgress.Around(new WorkListener(null) { Stop = stop.Token }))
        using (WorkProgress.Begin())
        using (var inner = WorkProgress.Begin())
        {
            stop.Cancel();
            Assert.True(inner.Stop.IsCancellationRequested);
            Assert.ThrowsAny<OperationCanceledException>(() => Odds());
        }
    }

    [Fact]
    public void Draws_are_the_same_whether_somebody_waits_for_a_preview_or_not()
    {
        var alone = Odds();
        using var listening = WorkProgress.Around(Listener);
        Assert.Equal(alone.Values.Values.ToArray(), Odds().Values.Values.ToArray());
    }

    private static Chances Odds() =>
        new YearlyPlan { Currency = Currency.Of("EUR"), Investment = Certain.Of(9000), YearlyValue = new NormalDistribution(700, 90) }.HowSure(new DrawOptions { MostDraws = 20_000 });
}
