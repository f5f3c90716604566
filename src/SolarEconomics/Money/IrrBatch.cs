namespace SolarEconomics;

/// <summary>Rates of return of many flows at once.</summary>
/// <remarks>A rate is only handed out where there is exactly one: a flow without one cannot pass for 0 % or not a number.</remarks>
public sealed class IrrBatch
{
    private readonly double[] _ratesPerYear;
    private readonly SolveEnd[] _ends;

    internal IrrBatch(double[] ratesPerYear, SolveEnd[] ends) => (_ratesPerYear, _ends) = (ratesPerYear, ends);

    /// <summary>Number of flows.</summary>
    public int Count => _ends.Length;

    /// <summary>How the search ended, flow by flow.</summary>
    public IReadOnlyList<SolveEnd> Ends => _ends;

    /// <summary>Number of flows with exactly one rate.</summary>
    public int Solved => _ends.Count(e => e == SolveEnd.Root);

    /// <summary>The rate of one flow, where it has exactly one.</summary>
    /// <param name="flow">Number of the flow, from 0.</param>
    /// <param name="ratePerYear">The rate per year, a fraction; 0 where the answer is false.</param>
    public bool TryRate(int flow, out double ratePerYear)
    {
        ratePerYear = _ratesPerYear[flow];
        return _ends[flow] == SolveEnd.Root;
    }
}
