using System.Diagnostics;

namespace SolarEconomics.Benchmarks;

/// <summary>A contender inside this process.</summary>
/// <param name="name">Name in the table.</param>
/// <param name="work">What is timed.</param>
/// <param name="checksum">Sums of its result, not timed.</param>
internal sealed class InProcess<T>(string name, Func<T> work, Func<T, IReadOnlyList<double>> checksum) : Contender(name)
{
    internal override Timed Run()
    {
        // The litter of the run before is not this run's: swept up before the clock starts.
        GC.Collect();
        GC.WaitForPendingFinalizers();
        var start = Stopwatch.GetTimestamp();
        var result = work();
        var seconds = Stopwatch.GetElapsedTime(start).TotalSeconds;
        return new Timed(seconds, checksum(result));
    }
}
