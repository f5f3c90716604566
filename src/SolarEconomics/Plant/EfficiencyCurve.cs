namespace SolarEconomics;

/// <summary>Efficiency of an inverter by load: a constant loss, one that grows with the output and one with its square.</summary>
/// <remarks>Loss and output as shares of the rated output: loss = c0 + c1 x + c2 x². Immutable. Source: gen-2.</remarks>
public sealed record EfficiencyCurve
{
    private EfficiencyCurve(double constant, double linear, double square) => (Constant, Linear, Square) = (constant, linear, square);

    /// <summary>Loss that is always there, c0. Unit: share of the rated output.</summary>
    public double Constant { get; }

    /// <summary>Loss that grows with the output, c1.</summary>
    public double Linear { get; }

    /// <summary>Loss that grows with the square of the output, c2. Range: 0 or more.</summary>
    public double Square { get; }

    /// <summary>90 % at a tenth of the load, 96 % at half, 95.5 % at full: a middling transformerless inverter. Common practice, no source.</summary>
    public static EfficiencyCurve Usual { get; } = Through(0.90, 0.96, 0.955);

    /// <summary>The same efficiency at every load.</summary>
    /// <param name="efficiency">Efficiency. Range: 0.5 to 1.</param>
    public static EfficiencyCurve Flat(double efficiency) => new(0, (1 / Efficiency(efficiency)) - 1, 0);

    /// <summary>The curve through three points of a data sheet.</summary>
    /// <param name="atTenth">Efficiency at 10 % of the rated output. Range: 0.5 to 1.</param>
    /// <param name="atHalf">Efficiency at 50 %. Range: 0.5 to 1.</param>
    /// <param name="atFull">Efficiency at 100 %. Range: 0.5 to 1.</param>
    /// <exception cref="ArgumentException">The three points bend the wrong way: a loss would be negative.</exception>
    public static EfficiencyCurve Through(double atTenth, double atHalf, double atFull)
    {
        // Losses at the three loads, then Newton's divided differences.
        var (l1, l2, l3) = (0.1 * ((1 / Efficiency(atTenth)) - 1), 0.5 * ((1 / Efficiency(atHalf)) - 1), (1 / Efficiency(atFull)) - 1);
        var first = (l2 - l1) / 0.4;
        var square = (((l3 - l2) / 0.5) - first) / 0.9;
        var linear = first - (square * 0.6);
        var constant = l1 - (linear * 0.1) - (square * 0.01);
        if (constant < -1e-12 || square < -1e-12 || linear < -0.5) throw Throw.BentEfficiency(atTenth, atHalf, atFull);
        return new EfficiencyCurve(Math.Max(0, constant), linear, Math.Max(0, square));
    }

    /// <summary>Output of an input, before any limit. Unit: share of the rated output; 0 while the input does not cover the constant loss.</summary>
    /// <param name="inputShare">Input as a share of the rated output. Range: 0 or more.</param>
    /// <remarks>Equation: c2 x² + (1 + c1) x + c0 = input, solved for x without subtraction of like numbers.</remarks>
    public double Output(double inputShare)
    {
        var net = inputShare - Constant;
        if (!(net > 0)) return 0;
        var b = 1 + Linear;
        return 2 * net / (b + Math.Sqrt((b * b) + (4 * Square * net)));
    }

    /// <summary>Efficiency at a load. Range: 0 to 1.</summary>
    /// <param name="outputShare">Output as a share of the rated output. Range: above 0 to 1.5.</param>
    public double At(double outputShare)
    {
        var x = Require.Within(outputShare, 1e-9, 1.5, "share of the rated output");
        return x / (x + LossAt(x));
    }

    /// <summary>Loss at a load. Unit: share of the rated output.</summary>
    internal double LossAt(double outputShare) => Constant + (Linear * outputShare) + (Square * outputShare * outputShare);

    private static double Efficiency(double value) => Require.Within(value, 0.5, 1, "a fraction; 96 % is written 0.96");
}
