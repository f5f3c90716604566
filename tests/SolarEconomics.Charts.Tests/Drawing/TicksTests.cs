using System.Globalization;
using CsCheck;

namespace SolarEconomics.Charts.Tests;

public sealed class TicksTests
{
    [Theory]
    [InlineData(-14200, 21000, "−€10k|€0|€10k|€20k")]
    [InlineData(-5300, 2200, "−€4k|−€2k|€0|€2k")]
    [InlineData(-1100, 300, "−€1,000|−€500|€0")]
    [InlineData(-2.1, 0.4, "−€2.0|−€1.5|−€1.0|−€0.5|€0")]
    [InlineData(0, 6_000_000, "€0|€1M|€2M|€3M|€4M|€5M|€6M")]
    public void Ticks_are_round_and_written_alike(double low, double high, string expected)
    {
        var ticks = Ticks.Between(low, high, most: 6);
        Assert.Equal(expected, string.Join('|', Ticks.Words(ticks, CashSamples.Euro, CultureInfo.InvariantCulture)));
    }

    [Fact]
    public void Ticks_stand_inside_the_axis_and_are_between_two_and_seven() =>
        Gen.Select(Gen.Double[-1e6, 1e6], Gen.Double[1, 1e6]).Sample((low, width) =>
        {
            var ticks = Ticks.Between(low, low + width, most: 6);
            return ticks.Count is >= 2 and <= 7 && ticks.All(t => (double)t >= low - 1e-6 && (double)t <= low + width + 1e-6);
        });
}
