namespace SolarEconomics.Notebook.Tests;

public sealed class ProgressTellerTests
{
    private readonly HandClock clock = new();
    private readonly List<(double Share, double SecondsLeft)> told = [];
    private readonly ProgressTeller teller;

    public ProgressTellerTests() => teller = new ProgressTeller(clock, (share, left) => told.Add((share, left)));

    private void After(double seconds, double share)
    {
        clock.Advance(TimeSpan.FromSeconds(seconds));
        teller.Report(share);
    }

    [Fact]
    public void Time_left_is_the_rest_at_the_pace_so_far()
    {
        teller.Report(0);
        After(2, 0.25);
        Assert.Equal([(0.25, 6.0)], told);
    }

    [Fact]
    public void Work_that_is_over_at_once_is_never_told()
    {
        for (var piece = 0; piece < 50; piece++)
        {
            teller.Report(0);
            After(0.1, 0.5);
            After(0.1, 1);
        }
        Assert.Empty(told);
    }

    [Fact]
    public void It_is_told_four_times_a_second_at_most()
    {
        teller.Report(0);
        for (var i = 1; i <= 100; i++) After(0.02, i / 200.0);
        Assert.InRange(told.Count, 6, 8);
    }

    [Fact]
    public void Threads_that_tell_out_of_order_take_nothing_back()
    {
        teller.Report(0);
        After(1, 0.5);
        After(1, 0.4);
        Assert.Equal([0.5, 0.5], told.Select(one => one.Share));
    }

    [Fact]
    public void The_end_of_a_piece_that_was_told_is_told_and_the_next_begins_anew()
    {
        teller.Report(0);
        After(1, 0.5);
        After(1, 1);
        teller.Report(0);
        After(1, 0.1);
        Assert.Equal([(0.5, 1.0), (1.0, 0.0), (0.1, 9.0)], told.Select(one => (one.Share, Math.Round(one.SecondsLeft, 9))));
    }

    private sealed class HandClock : TimeProvider
    {
        private TimeSpan now;

        public override long TimestampFrequency => TimeSpan.TicksPerSecond;

        public override long GetTimestamp() => now.Ticks;

        public void Advance(TimeSpan by) => now += by;
    }
}
