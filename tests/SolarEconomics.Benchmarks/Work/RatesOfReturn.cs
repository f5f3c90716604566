using System.Globalization;
using System.Runtime.InteropServices;
using MathNet.Numerics;

namespace SolarEconomics.Benchmarks;

/// <summary>Internal rates of return of flows with one change of sign: 26 values, year 0 first.</summary>
internal static class RatesOfReturn
{
    private const int Values = 26;

    internal static Comparison OneAtATime(int flows)
    {
        var (made, path) = Make(flows);
        return new Comparison("internal rate, 26 flows, one at a time", "rate", flows,
            new InProcess<double[]>("ours", () => Each(made, flow => TimeValue.Irr(flow)), Checksum),
            [
                new Rival(new PythonPeer("numpy.roots", "irr_roots.py", path, Text(Values)), 200),
                new Rival(new PythonPeer("scipy brentq", "irr_brentq.py", path, Text(Values)), 75),
                new Rival(new InProcess<double[]>("MathNet roots", () => Each(made, ByMathNet), Checksum), 200),
            ]);
    }

    internal static Comparison AllAtOnce(int flows)
    {
        var (made, path) = Make(flows);
        return new Comparison($"internal rate, {Words.Count(flows)} at once", "rate", flows,
            new InProcess<IrrBatch>("ours", () => TimeValue.IrrOfEach(made, Values), batch => Checksum(Rates(batch))),
            [new Rival(new PythonPeer("numpy Newton on all rows", "irr_newton.py", path, Text(Values)), 2.5)]);
    }

    internal static (double[] Flows, string Path) Make(int count)
    {
        var random = new Random(20_260_303);
        var flows = new double[count * Values];
        for (var flow = 0; flow < count; flow++)
        {
            var cost = 6000 + (9000 * random.NextDouble());
            flows[flow * Values] = -Math.Round(cost, 2);
            for (var year = 1; year < Values; year++)
                flows[(flow * Values) + year] = Math.Round(cost * (0.06 + (0.08 * random.NextDouble())) * Math.Pow(1.02, year), 2);
        }
        var path = Places.Made($"flows-{Text(count)}.f64");
        File.WriteAllBytes(path, MemoryMarshal.AsBytes(flows.AsSpan()));
        return (flows, path);
    }

    internal static double ByMathNet(double[] flow)
    {
        // Roots of Σ Fₜ vᵗ with v = 1/(1+r): the positive real one.
        foreach (var root in FindRoots.Polynomial(flow))
            if (root.Real > 0 && Math.Abs(root.Imaginary) < 1e-9) return (1 / root.Real) - 1;
        throw new InvalidOperationException("No real root.");
    }

    private static double[] Each(double[] flows, Func<double[], double> rate)
    {
        var rates = new double[flows.Length / Values];
        for (var i = 0; i < rates.Length; i++) rates[i] = rate(flows[(i * Values)..((i + 1) * Values)]);
        return rates;
    }

    private static double[] Rates(IrrBatch batch)
    {
        var rates = new double[batch.Count];
        for (var i = 0; i < rates.Length; i++)
            if (!batch.TryRate(i, out rates[i])) throw new InvalidOperationException($"Flow {i} ended as {batch.Ends[i]}.");
        return rates;
    }

    private static double[] Checksum(double[] rates) => [rates.Length, rates.Sum()];

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
