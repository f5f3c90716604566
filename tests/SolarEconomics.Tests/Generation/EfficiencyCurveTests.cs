using CsCheck;

namespace SolarEconomics.Tests.GenerationRoom;

public sealed class EfficiencyCurveTests
{
    [Fact]
    public void The_curve_runs_through_the_three_points_given() =>
        Assert.All([(0.1, 0.90), (0.5, 0.96), (1.0, 0.955)], p => Assert.Equal(p.Item2, EfficiencyCurve.Usual.At(p.Item1), 1e-12));

    [Fact]
    public void Output_and_efficiency_undo_each_other() =>
        Gen.Double[0.01, 1.4].Sample(x => Assert.Equal(x, EfficiencyCurve.Usual.Output(x / EfficiencyCurve.Usual.At(x)), 1e-12));

    [Fact]
    public void No_input_no_output_and_never_more_out_than_in() =>
        Gen.Double[0, 2].Sample(x =>
        {
            Assert.Equal(0, EfficiencyCurve.Usual.Output(0));
            Assert.InRange(EfficiencyCurve.Usual.Output(x), 0, x);
        });

    [Fact]
    public void Points_in_the_wrong_order_are_refused() =>
        Assert.Equal("Found efficiencies 0.99, 0.7 and 0.98 at 10, 50 and 100 % load, expected ones that no negative loss would need. Check that they stand in this order.",
            Assert.Throws<ArgumentException>(() => EfficiencyCurve.Through(0.99, 0.70, 0.98)).Message);
}
