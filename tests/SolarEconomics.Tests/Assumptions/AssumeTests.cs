namespace SolarEconomics.Tests;

public class AssumeTests
{
    [Fact]
    public void A_rate_inside_its_range_is_handed_on() => Assert.Equal(0.05, Assume.Rate("Discount rate", 0.05, from: 0, to: 0.15));

    [Fact]
    public void A_rate_written_as_per_cent_is_refused_with_what_to_write()
    {
        var e = Assert.Throws<ArgumentOutOfRangeException>(() => Assume.Rate("Discount rate", 5, from: 0, to: 0.15));
        Assert.StartsWith("Discount rate: found 5, expected a number from 0 to 0.15 (a fraction a year; 5 % is written 0.05).", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_number_that_is_none_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Assume.Number("Price", double.NaN, "EUR", from: 0, to: 1));
}
