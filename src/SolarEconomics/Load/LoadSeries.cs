namespace SolarEconomics;

/// <summary>The wanted use of a home, in named parts, on a time line. Unit: kWh per interval.</summary>
/// <remarks>What is wanted, not what was served: off-grid the two differ. Immutable, so safe to share between threads.</remarks>
public sealed partial class LoadSeries
{
    private readonly double[] _total;

    private LoadSeries(Timeline time, IReadOnlyList<LoadPart> parts)
    {
        if (parts.Count == 0) throw Throw.NoLoadParts();
        (Time, Parts) = (time, parts);
        _total = new double[time.Count];
        foreach (var part in parts)
        {
            if (part.Kwh.Length != time.Count) throw Throw.SeriesLength($"load \"{part.Name}\"", part.Kwh.Length, time.Count);
            var kwh = part.Kwh.Span;
            for (var i = 0; i < kwh.Length; i++)
            {
                if (!(kwh[i] >= 0 && kwh[i] < double.PositiveInfinity)) throw Throw.NotAnEnergy($"load \"{part.Name}\"", i, time.LocalStartOf(i), kwh[i]);
                _total[i] += kwh[i];
            }
        }
    }

    /// <summary>The intervals.</summary>
    public Timeline Time { get; }

    /// <summary>The parts; at least one.</summary>
    public IReadOnlyList<LoadPart> Parts { get; }

    /// <summary>All parts together, one value per interval. Unit: kWh.</summary>
    public ReadOnlySpan<double> Kwh => _total;

    internal double[] TotalArray => _total;

    /// <summary>A load of one part.</summary>
    /// <param name="time">The intervals.</param>
    /// <param name="kwh">Energy wanted in each. Unit: kWh.</param>
    /// <param name="name">Name of the part. Default: <c>home</c>.</param>
    /// <exception cref="ArgumentException">Another number of values than intervals, or one that is no energy.</exception>
    public static LoadSeries Of(Timeline time, ReadOnlyMemory<double> kwh, string name = "home") => Of(time, new LoadPart(name, kwh));

    /// <summary>A load of several parts.</summary>
    /// <param name="time">The intervals.</param>
    /// <param name="parts">The parts.</param>
    /// <exception cref="ArgumentException">No part, another number of values than intervals, or one that is no energy.</exception>
    public static LoadSeries Of(Timeline time, params IReadOnlyList<LoadPart> parts)
    {
        ArgumentNullException.ThrowIfNull(time);
        ArgumentNullException.ThrowIfNull(parts);
        return new LoadSeries(time, parts);
    }

    /// <summary>The same with one more part: a car, a heat pump, a workshop.</summary>
    /// <param name="part">The part, on the same intervals.</param>
    /// <exception cref="ArgumentException">Another number of values than intervals, or one that is no energy.</exception>
    public LoadSeries With(LoadPart part) => new(Time, [.. Parts, part]);
}
