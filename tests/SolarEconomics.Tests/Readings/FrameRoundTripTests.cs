using CsCheck;
using Deedle;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>What goes into a frame comes back: names, intervals of any length, what is missing, typed counters.</summary>
public sealed class FrameRoundTripTests
{
    private static readonly Instant Start = Instant.FromUtc(2024, 5, 1, 0, 0);

    private static Channel Of(string name, int[] gaps, int[] minutes, string unit = "kWh", int missing = -1)
    {
        var (starts, ends) = (new List<Instant>(), new List<Instant>());
        var at = Start;
        for (var i = 0; i < minutes.Length; i++)
        {
            at += Duration.FromMinutes(gaps[i]);
            starts.Add(at);
            at += Duration.FromMinutes(minutes[i]);
            ends.Add(at);
        }
        return new Channel(name, FlowKind.Unknown, [.. starts], [.. ends], [.. minutes.Select((m, i) => i == missing ? 0 : m / 7.0)], [.. minutes.Select((_, i) => i == missing ? Quality.Missing : Quality.Good)]) { Unit = unit };
    }

    private static void AssertSame(Channel a, Channel b)
    {
        Assert.Equal(a.Name, b.Name);
        Assert.Equal(a.IsEnergy, b.IsEnergy);
        Assert.True(a.Starts.SequenceEqual(b.Starts));
        Assert.True(a.Ends.SequenceEqual(b.Ends));
        Assert.True(a.Kwh.SequenceEqual(b.Kwh));
        Assert.True(a.Quality.SequenceEqual(b.Quality));
    }

    [Theory]
    [InlineData("Power W 0", "kWh")]
    [InlineData("Power kW 0", "kWh")]
    [InlineData("Roof (Wh)", "kWh")]
    [InlineData("counter of the roof", "kWh")]
    [InlineData("temperature of the roof", "kWh")]
    [InlineData("the [end]", "kWh")]
    [InlineData("Roof", "kWh")]
    [InlineData("Roof (kWh)", "kWh")]
    [InlineData("Roof", "unknown")]
    [InlineData("Power W 0", "kVArh")]
    [InlineData("Reactive (kVArh)", "kVArh")]
    public void A_name_comes_back_as_it_went_and_is_read_as_what_it_was(string name, string unit)
    {
        var channel = Of(name, [0, 0, 0], [60, 60, 60], unit);
        AssertSame(channel, Assert.Single(Readings.FromFrame(new Readings([channel], [], []).ToFrame()).Channels));
    }

    [Fact]
    public void A_name_that_says_no_other_unit_is_the_column_s_name() =>
        Assert.Equal(["Roof"], new Readings([Of("Roof", [0, 0], [30, 30])], [], []).ToFrame().ColumnKeys);

    [Fact]
    public void Irregular_intervals_bring_their_ends_along()
    {
        var channel = Of("Roof", [0, 10, 0, 25], [60, 15, 60, 5], missing: 2);
        var frame = new Readings([channel], [], []).ToFrame();
        Assert.Equal(["Roof", "Roof [end]"], frame.ColumnKeys);
        AssertSame(channel, Assert.Single(Readings.FromFrame(frame).Channels));
    }

    [Fact]
    public void Channels_of_any_intervals_come_back_together()
    {
        var channel = Gen.Int[1, 200].Array[2, 12].SelectMany(minutes => Gen.Int[0, 50].Array[minutes.Length].Select(gaps => (gaps, minutes)));
        Gen.Select(channel, channel).Sample((a, b) =>
        {
            var went = new Readings([Of("Roof", a.gaps, a.minutes), Of("Shed kW 1", b.gaps, b.minutes)], [], []);
            var came = Readings.FromFrame(went.ToFrame()).Channels;
            foreach (var (one, other) in went.Channels.Zip(came))
            {
                // Rows of the other channel are missing intervals of one without ends of its own.
                var known = Enumerable.Range(0, other.Count).Where(i => !other.Quality[i].HasFlag(Quality.Missing)).ToArray();
                Assert.Equal((one.Name, one.Count), (other.Name, known.Length));
                for (var i = 0; i < known.Length; i++) Assert.Equal((one.Starts[i], one.Ends[i], one.Kwh[i]), (other.Starts[known[i]], other.Ends[known[i]], other.Kwh[known[i]]));
            }
        }, iter: 300);
    }

    [Fact]
    public void Typed_counters_come_back_with_dates_photos_and_notes()
    {
        var roof = new Counter("roof", MeasurementPoint.Unknown, [new(new LocalDate(2024, 1, 1), 100.1, 2, "a.jpg", "dim, dark"), new(new LocalDate(2024, 2, 1), 130.25)]);
        var shed = new Counter("shed", MeasurementPoint.Unknown, [new(new LocalDate(2024, 1, 5), 0)]);
        var back = Readings.FromCounterFrame(new Readings([], [roof, shed], []).CountersToFrame());
        Assert.Equal(["roof", "shed"], back.Counters.Select(c => c.Device));
        Assert.Equal(roof.Readings.Concat(shed.Readings), back.Counters.SelectMany(c => c.Readings).Select(r => r with { Line = 0 }));
        Assert.Empty(back.Problems);
    }

    [Fact]
    public void A_row_of_a_frame_that_is_no_reading_is_listed_and_a_lacking_column_named()
    {
        var frame = new Readings([], [new Counter("roof", MeasurementPoint.Unknown, [new(new LocalDate(2024, 1, 1), -5), new(new LocalDate(2024, 2, 1), 130)])], []).CountersToFrame();
        var back = Readings.FromCounterFrame(frame);
        Assert.Equal((1, 130.0), (Assert.Single(back.Problems).Line, Assert.Single(back.Counters).LastKwh));
        frame.DropColumn("kwh");
        Assert.Contains("expected one named \"kwh\"", Assert.Throws<ArgumentException>(() => Readings.FromCounterFrame(frame)).Message);
    }
}
