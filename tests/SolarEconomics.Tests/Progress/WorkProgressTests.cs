namespace SolarEconomics.Tests;

/// <summary>Long work tells how far it is, to whom the caller names and to whoever listens around it.</summary>
public sealed class WorkProgressTests
{
    private readonly Told around = new();

    [Fact]
    public void Work_tells_its_beginning_its_shares_and_its_end()
    {
        using (WorkProgress.Around(around))
        using (var work = WorkProgress.Begin()) work.Report(0.5);
        Assert.Equal([0, 0.5, 1], around.Shares);
    }

    [Fact]
    public void Who_is_named_hears_the_shares_as_they_are_and_nothing_else()
    {
        var named = new Told();
        using (WorkProgress.Around(around))
        using (var work = WorkProgress.Begin(named)) { work.Report(0.5); work.Report(1); }
        Assert.Equal([0.5, 1], named.Shares);
        Assert.Equal([0, 0.5, 1], around.Shares);
    }

    [Fact]
    public void Work_inside_other_work_is_told_to_nobody_around()
    {
        using (WorkProgress.Around(around))
        using (var outer = WorkProgress.Begin())
        {
            using (var inner = WorkProgress.Begin()) inner.Report(0.9);
            outer.Report(0.3);
        }
        Assert.Equal([0, 0.3, 1], around.Shares);
    }

    [Fact]
    public void Work_that_fails_has_ended_and_the_next_is_told_again()
    {
        using var listening = WorkProgress.Around(around);
        Assert.Throws<InvalidOperationException>(Fail);
        using (var next = WorkProgress.Begin()) next.Report(0.7);
        Assert.Equal([0, 0.1, 1, 0, 0.7, 1], around.Shares);

        static void Fail()
        {
            using var work = WorkProgress.Begin();
            work.Report(0.1);
            throw new InvalidOperationException("broken");
        }
    }

    [Fact]
    public void Nobody_around_hears_anything_once_listening_ended()
    {
        WorkProgress.Around(around).Dispose();
        using (var work = WorkProgress.Begin()) work.Report(0.5);
        Assert.Empty(around.Shares);
    }

    [Fact]
    public void Several_like_pieces_count_as_one()
    {
        var named = new Told();
        using (WorkProgress.Around(around))
        using (var work = WorkProgress.Begin())
            for (var at = 0; at < 2; at++) work.Part(at, 2, named).Report(0.5);
        Assert.Equal([0, 0.25, 0.75, 1], around.Shares);
        Assert.Equal([0.5, 0.5], named.Shares);
    }

    [Fact]
    public void Draws_tell_how_far_they_are_without_being_asked()
    {
        var plan = new YearlyPlan { Currency = Currency.Of("EUR"), Investment = Certain.Of(9000), YearlyValue = new NormalDistribution(700, 90) };
        using (WorkProgress.Around(around)) plan.HowSure(new DrawOptions { MostDraws = 10_000 });
        Assert.Equal((0, 1), (around.Shares[0], around.Shares[^1]));
        Assert.True(around.Shares.Count > 5, $"told {around.Shares.Count} times");
    }

    private sealed class Told : IProgress<double>
    {
        private readonly Lock gate = new();

        public List<double> Shares { get; } = [];

        public void Report(double value)
        {
            lock (gate) Shares.Add(value);
        }
    }
}
