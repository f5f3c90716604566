using CsCheck;
using Deedle;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Every kind of channel leaves in frames and tables and comes back as what it was: with its flow, its unit, its values.</summary>
public sealed class EveryKindOutTests : IDisposable
{
    private static readonly Instant Start = Instant.FromUtc(2024, 6, 1, 0, 0);
    private static readonly Site Utc = Site.At("Test mill", 53, -9, "UTC", "EUR");
    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    /// <summary>Names that say their flow, as this library writes them.</summary>
    private static readonly (string Name, FlowKind Flow, string Unit)[] Kinds =
    [
        ("import", FlowKind.Import, "kWh"), ("export", FlowKind.Export, "kWh"), ("generation roof", FlowKind.Generation, "kWh"), ("use", FlowKind.Use, "kWh"),
        ("battery charge", FlowKind.BatteryCharge, "kWh"), ("battery discharge", FlowKind.BatteryDischarge, "kWh"), ("Q1", FlowKind.Unknown, "kVArh"), ("x", FlowKind.Unknown, "unknown"),
    ];

    [Fact]
    public void Any_channels_go_into_a_frame_and_come_back() => Gen.Select(Gen.Int[0, 255], Gen.Double[0, 9].Array[24]).Sample((chosen, values) =>
    {
        var first = Readings(Kinds.Where((_, i) => (chosen >> i & 1) == 1).ToArray(), values);
        if (first.Channels.Count == 0) return;
        var second = SolarEconomics.Readings.FromFrame(first.ToFrame());
        Assert.Equal(first.Channels.Select(c => (c.Flow, c.Unit, c.Total.Kwh)), second.Channels.Select(c => (c.Flow, c.Unit, c.Total.Kwh)));
    }, iter: 300);

    [Fact]
    public void A_frame_of_power_and_of_a_counter_becomes_energy_and_what_is_neither_is_said()
    {
        var keys = Enumerable.Range(0, 3).Select(i => Start + Duration.FromHours(i)).ToArray();
        Series<Instant, double> Of(params double[] values) => new(keys, values);
        var readings = SolarEconomics.Readings.FromFrame(Frame.FromColumns(new[]
        {
            KeyValuePair.Create("pv (kW)", Of(1, 2, 0)), KeyValuePair.Create("lifetime counter (kWh)", Of(100, 101, 103.5)), KeyValuePair.Create("temperature", Of(20, 21, 22)),
        }));
        // By hand: 1 h at 1 and 2 kW; steps of 1 and 2.5 kWh.
        Assert.Equal([3.0, 3.5], readings.Channels.Select(c => c.Total.Kwh));
        Assert.Equal([null, 3], readings.Channels.Select(c => c.CounterStates));
        Assert.Contains(readings.Problems, p => p.Found == "the column \"temperature\", which is no energy, power or counter");
    }

    [Fact]
    public void Channels_that_are_no_energy_stand_in_the_table_with_their_unit()
    {
        var path = _files.Write("out.csv", "");
        Readings(Kinds[6..], [.. Enumerable.Range(1, 24).Select(i => (double)i)]).WriteCsv(path);
        Assert.Equal(["start,end,Q1 (kVArh),x", "2024-06-01T00:00:00Z,2024-06-01T01:00:00Z,1,1"], File.ReadLines(path).Take(2));
    }

    [Fact]
    public void Counters_alone_are_written_as_a_counter_file_that_reads_back()
    {
        var counters = SolarEconomics.Readings.Load(_files.Write("counters.csv", "date,device,kwh,days uncertain,photo,note\n2024-01-01,south,100.25,0,,\n2024-02-01,south,150,2,a.jpg,\"blurred, \"\"dim\"\"\"\n2024-01-05,west,3,0,,\n"), Utc);
        var path = _files.Write("again.csv", "");
        Assert.Equal("Found 2 counters and no channel of intervals, expected intervals for this table. Write typed readings of counters by WriteCountersCsv.",
            Assert.Throws<InvalidOperationException>(() => counters.WriteCsv(path)).Message);
        counters.WriteCountersCsv(path);
        var again = SolarEconomics.Readings.Load(path, Utc);
        Assert.Equal(Rows(counters), Rows(again));
        Assert.Empty(again.Problems);
    }

    private static IEnumerable<(string, LocalDate, double, int, string?, string?)> Rows(Readings readings) =>
        readings.Counters.SelectMany(c => c.Readings.Select(r => (c.Device, r.Date, r.Kwh, r.DaysUncertain, r.Photo, r.Note)));

    private static Readings Readings((string Name, FlowKind Flow, string Unit)[] kinds, double[] values)
    {
        var starts = Enumerable.Range(0, values.Length).Select(i => Start + Duration.FromHours(i)).ToArray();
        Channel[] channels = [.. kinds.Select(k => new Channel(k.Name, k.Flow, starts, [.. starts.Select(s => s + Duration.FromHours(1))], values, new Quality[values.Length]) { Unit = k.Unit })];
        return new Readings(channels, [], []);
    }
}
