namespace SolarEconomics;

public static partial class TimeValue
{
    /// <summary>Internal rates of return (IRR) of many yearly flows of one length, two vectors of eight or of four at a time.</summary>
    /// <param name="flows">Flow after flow, each year 0 first. Shape: a whole number of flows, finite.</param>
    /// <param name="valuesPerFlow">Values in each flow. Range: 1 or more.</param>
    /// <returns>A rate or a reason for every flow: the same that <see cref="TryIrr(ReadOnlySpan{double}, out IrrResult)"/> gives, to 1e-12.</returns>
    /// <exception cref="ArgumentException">The values are not a whole number of flows, or one is not finite.</exception>
    /// <remarks>The widest vectors that the processor really has are used. Source: money-2.</remarks>
    public static IrrBatch IrrOfEach(ReadOnlySpan<double> flows, int valuesPerFlow)
    {
        if (valuesPerFlow < 1 || flows.Length % valuesPerFlow != 0) throw Throw.NotWholeFlows(flows.Length, valuesPerFlow);
        var count = flows.Length / valuesPerFlow;
        // Every rate is written once: no need to clear the room first.
        var rates = GC.AllocateUninitializedArray<double>(count);
        var ends = new SolveEnd[count];
        RateSolver.SolveEach(flows, valuesPerFlow, rates, ends);
        return new IrrBatch(rates, ends);
    }
}
