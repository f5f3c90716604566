using NodaTime;

namespace SolarEconomics;

/// <summary>A grid of intervals in whole seconds of real time.</summary>
internal readonly struct PlanTicks
{
    private const long LongestStep = 7 * 86_400;
    private readonly long _start;

    internal PlanTicks(IntervalGrid grid)
    {
        var step = grid.Step;
        if (step <= Duration.Zero || step > Duration.FromSeconds(LongestStep) || step != Duration.FromSeconds((long)step.TotalSeconds))
            throw Throw.NotWholeSeconds(step);
        _start = grid.Start.ToUnixTimeSeconds();
        Step = (long)step.TotalSeconds;
        Count = grid.Count;
    }

    internal long Step { get; }

    internal int Count { get; }

    internal long StartOf(int interval) => _start + (interval * Step);

    /// <summary>The first interval that holds any time from <paramref name="second"/> on.</summary>
    internal int FirstTouching(long second) => (int)Math.Clamp(Math.DivRem(second - _start, Step).Quotient, 0, Count);

    /// <summary>The first interval that starts at <paramref name="second"/> or later.</summary>
    internal int FirstFrom(long second) => (int)Math.Clamp((second - _start + Step - 1) / Step, 0, Count);
}
