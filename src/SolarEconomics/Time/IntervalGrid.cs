using NodaTime;

namespace SolarEconomics;

/// <summary>A row of equal half-open intervals of real time, on which energy series are laid side by side.</summary>
/// <param name="Start">Start of interval 0.</param>
/// <param name="Step">Length of every interval, above zero.</param>
/// <param name="Count">Number of intervals, 0 or more.</param>
/// <remarks>Interval <c>i</c> is <c>[Start + i·Step, Start + (i+1)·Step)</c>. Real time knows no clock change:
/// a local day holds 46, 48 or 50 half hours. The <c>default</c> is empty.</remarks>
public readonly record struct IntervalGrid(Instant Start, Duration Step, int Count)
{
    /// <summary>End of the last interval, excluded.</summary>
    public Instant End => Start + (Step * (long)Count);

    /// <summary>Start of one interval.</summary>
    /// <param name="index">0 to <see cref="Count"/>; <see cref="Count"/> gives <see cref="End"/>.</param>
    public Instant StartOf(int index) => Start + (Step * (long)index);

    /// <summary>Length of one interval in hours.</summary>
    public double StepHours => Step.TotalHours;
}
