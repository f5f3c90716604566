using CsCheck;

namespace SolarEconomics.Tests;

public class LargestRemainderTests
{
    [Fact]
    public void Three_equal_thirds_of_one_give_the_odd_cent_to_the_first() =>
        Assert.Equal([0.34m, 0.33m, 0.33m], LargestRemainder.Round([1m / 3, 1m / 3, 1m / 3], 2));

    [Fact]
    public void Rounded_parts_sum_to_the_rounded_total_and_none_moves_by_a_cent() =>
        Gen.Int[-1_000_000, 1_000_000].Select(i => i / 1_000m).Array[1, 8].Sample(parts =>
        {
            var rounded = LargestRemainder.Round(parts, 2);
            Assert.Equal(Math.Round(parts.Sum(), 2, MidpointRounding.AwayFromZero), rounded.Sum());
            Assert.All(parts.Zip(rounded), p => Assert.True(Math.Abs(p.First - p.Second) < 0.01m + 1e-12m));
        });
}
