using System.Globalization;

namespace SolarEconomics.Tests;

/// <summary>What a 300 record and the 400 records below it say of the quality of a day, together and against each other.</summary>
public sealed class Nem12QualityTests : IDisposable
{
    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    [Fact]
    public void A_day_without_a_quality_is_counted_and_doubtful()
    {
        var content = Read(Day(1, ""));
        var channel = Assert.Single(content.Channels);
        Assert.Equal(48, channel.Total.Kwh);
        Assert.All(channel.Quality.ToArray(), q => Assert.Equal(Quality.Doubtful, q));
        var problem = Assert.Single(content.Problems);
        Assert.Equal((3, 51, Severity.Doubtful, 0.0), (problem.Line, problem.Column, problem.Severity, problem.UncountedKwh));
        Assert.Equal("no quality after the values", problem.Found);
    }

    [Fact]
    public void A_day_cut_off_after_its_last_value_is_lost_with_its_energy()
    {
        // The last value may have been longer.
        var content = Read(Day(1, "A") + $"300,20240102,{Values(2)}\n");
        Assert.Equal(48, Assert.Single(content.Channels).Total.Kwh);
        var problem = Assert.Single(content.Problems);
        Assert.Equal((4, Severity.Lost, 96.0), (problem.Line, problem.Severity, problem.UncountedKwh));
    }

    /// <summary>Quality letters and the two digits of the method behind them, in a day's record and in a part of a day. The lists of methods (11 to 24, 51 to 58,
    /// 61 to 69, 71 to 75 and those to come) are the specification's, from memory: what counts is the letter, whatever the digits.</summary>
    [Fact]
    public void Every_quality_with_every_method_counts_by_its_letter()
    {
        foreach (var letter in "AEFNS")
        {
            for (var method = 0; method < 100; method++)
            {
                var quality = string.Create(CultureInfo.InvariantCulture, $"{letter}{method:00}");
                var whole = Read(Day(1, quality));
                var part = Read(Day(1, "V") + $"400,1,10,{quality},,\n400,11,48,A,,\n");
                var (all, some) = (ChannelQuality.Of(whole.Channels[0]), ChannelQuality.Of(part.Channels[0]));
                var isEstimate = letter is 'E' or 'F' or 'S';
                Assert.Equal((isEstimate ? 48 : 0, letter == 'N' ? 48 : 0), (all.Estimated, all.Missing));
                Assert.Equal((isEstimate ? 10 : 0, letter == 'N' ? 10 : 0), (some.Estimated, some.Missing));
                Assert.Equal(letter == 'N' ? (0.0, 38.0) : (48.0, 48.0), (all.TotalKwh, Math.Round(some.TotalKwh, 9)));
            }
        }
    }

    [Fact]
    public void A_part_of_a_day_has_its_own_quality_whatever_the_day_says()
    {
        var content = Read(Day(1, "S14") + "400,1,20,A,,\n");
        Assert.Equal((28, 48.0), (ChannelQuality.Of(content.Channels[0]).Estimated, content.Channels[0].Total.Kwh));
        Assert.Empty(content.Problems);
    }

    [Theory]
    [InlineData("400,1,40,A,,\n400,30,48,S14,,\n", 19)]
    [InlineData("400,30,48,S14,,\n400,1,40,A,,\n", 19)]
    public void Records_of_the_same_intervals_are_said_and_any_estimate_stands(string events, int estimated)
    {
        var content = Read(Day(1, "V") + events);
        Assert.Equal(estimated, ChannelQuality.Of(content.Channels[0]).Estimated);
        var problem = Assert.Single(content.Problems);
        Assert.Equal((5, Severity.Doubtful), (problem.Line, problem.Severity));
        Assert.EndsWith(", of which 11 stand in one before it", problem.Found, StringComparison.Ordinal);
        Assert.Equal(events.Split('\n')[1], problem.Raw);
    }

    [Theory]
    [InlineData("400,0,48,A,,")]
    [InlineData("400,1,49,A,,")]
    [InlineData("400,9,8,A,,")]
    [InlineData("400,1,48,V,,")]
    [InlineData("400,1,48,X,,")]
    [InlineData("400,1")]
    public void A_part_that_cannot_be_is_said_and_the_values_stand(string line)
    {
        var content = Read(Day(1, "A") + line + "\n");
        Assert.Equal((48.0, 0), (content.Channels[0].Total.Kwh, ChannelQuality.Of(content.Channels[0]).Estimated));
        var problem = Assert.Single(content.Problems);
        Assert.Equal((4, line, "a 400 record that cannot be read"), (problem.Line, problem.Raw, problem.Found));
    }

    [Fact]
    public void A_later_actual_day_takes_the_place_of_a_substituted_one_with_its_quality()
    {
        var content = Read(Day(1, "S14", "20240102000000") + Day(1, "A", "20240201000000", 2));
        Assert.Equal((96.0, 0), (content.Channels[0].Total.Kwh, ChannelQuality.Of(content.Channels[0]).Estimated));
        Assert.Equal(48, Assert.Single(content.Problems).UncountedKwh);
    }

    [Fact]
    public void A_value_that_hangs_is_doubtful_and_counted()
    {
        var content = Read(Day(1, "A", value: 0.123));
        Assert.Equal(48 * 0.123, content.Channels[0].Total.Kwh, 9);
        Assert.StartsWith("the same 0.123 kWh under \"E1\" for 24 hours from 2023-12-31T14:00:00Z on", Assert.Single(content.Problems).Found, StringComparison.Ordinal);
        Assert.All(content.Channels[0].Quality.ToArray(), q => Assert.Equal(Quality.Doubtful, q));
    }

    [Fact]
    public void Values_below_zero_are_said_with_their_energy_and_where_they_begin()
    {
        var problem = Assert.Single(Read(Day(1, "A") + Day(2, "A", value: -0.5)).Problems);
        Assert.Equal("48 values below zero under \"E1\", -24 kWh together, the first at 2024-01-01T14:00:00Z", problem.Found);
    }

    private static string Values(double value) => string.Join(',', Enumerable.Repeat(value.ToString(CultureInfo.InvariantCulture), 48));

    private static string Day(int day, string quality, string updated = "20240201000000", double value = 1) => $"300,2024010{day},{Values(value)},{quality},,,{updated},\n";

    private RecordContent Read(string days) =>
        RecordReaders.Read(_files.Write("meter.csv", "100,NEM12,202401010000,A,B\n200,NMI1,E1,1,E1,N1,M1,kWh,30,\n" + days + "900\n"), new ReadOptions());
}
