using NodaTime;

namespace SolarEconomics;

public sealed partial class Channel
{
    /// <summary>The same energy in longer intervals of real time, each a whole number of the present ones. One missing part makes the whole missing.</summary>
    /// <param name="step">Length of the new intervals; they begin at whole multiples of it since 1970, UTC.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is not above zero.</exception>
    /// <exception cref="ArgumentException">An interval lies across the edge of two new ones.</exception>
    /// <remarks>A new interval that is only partly covered by present ones is missing, never a smaller amount.</remarks>
    public Channel InStepsOf(Duration step)
    {
        if (step <= Duration.Zero) throw new ArgumentOutOfRangeException(nameof(step), step, "Expected a length above zero.");
        var stepNs = step.ToInt64Nanoseconds();
        var (starts, ends, kwh, quality) = (new List<Instant>(), new List<Instant>(), new List<double>(), new List<Quality>());
        var covered = Duration.Zero;
        for (var i = 0; i < Count; i++)
        {
            var since = _times.Start(i) - NodaConstants.UnixEpoch;
            var from = NodaConstants.UnixEpoch + Duration.FromNanoseconds(Math.Floor(since.TotalNanoseconds / stepNs) * stepNs);
            if (_times.End(i) > from + step)
                throw new ArgumentException($"Found an interval from {_times.Start(i)} to {_times.End(i)} across the edge of two new ones, expected intervals that fit into {step}.", nameof(step));
            if (starts.Count == 0 || starts[^1] != from)
            {
                CloseStep(step, covered, kwh, quality);
                starts.Add(from);
                ends.Add(from + step);
                kwh.Add(0);
                quality.Add(SolarEconomics.Quality.Good);
                covered = Duration.Zero;
            }
            covered += _times.End(i) - _times.Start(i);
            kwh[^1] += _kwh[i];
            quality[^1] |= _quality[i];
        }
        CloseStep(step, covered, kwh, quality);
        return With([.. starts], [.. ends], [.. kwh], [.. quality]);
    }

    /// <summary>The same channel under another name.</summary>
    /// <param name="name">The new name.</param>
    public Channel Renamed(string name) => new(name, Flow, _times, _kwh, _quality)
    {
        Unit = Unit, Meter = Meter, Clock = Clock, Device = Device, Point = Point, File = File, ExtraReadings = ExtraReadings, Resets = Resets, CounterStates = CounterStates,
        Costs = Costs, CostCurrency = CostCurrency,
    };

    /// <summary>The most common length of an interval; an hour where there is none.</summary>
    internal Duration UsualStep
    {
        get
        {
            if (Count == 0) return Duration.FromHours(1);
            if (_times.StepTicks is { } ticks) return Duration.FromTicks(ticks);
            var counts = new Dictionary<long, int>();
            for (var i = 0; i < Count; i++)
            {
                var length = _times.EndTicks(i) - _times.StartTicks(i);
                counts[length] = counts.GetValueOrDefault(length) + 1;
            }
            return Duration.FromTicks(counts.OrderByDescending(c => c.Value).ThenBy(c => c.Key).First().Key);
        }
    }

    /// <summary>The same channel with other intervals.</summary>
    internal Channel With(Instant[] starts, Instant[] ends, double[] kwh, Quality[] quality) => new(Name, Flow, starts, ends, kwh, quality)
    {
        Unit = Unit, Meter = Meter, Clock = Clock, Device = Device, Point = Point, File = File, ExtraReadings = ExtraReadings, Resets = Resets, CounterStates = CounterStates,
    };

    private static void CloseStep(Duration step, Duration covered, List<double> kwh, List<Quality> quality)
    {
        if (kwh.Count == 0) return;
        if (covered < step) quality[^1] |= SolarEconomics.Quality.Missing;
        if (quality[^1].HasFlag(SolarEconomics.Quality.Missing)) kwh[^1] = 0;
    }
}
