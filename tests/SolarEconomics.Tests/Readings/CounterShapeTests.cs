using System.Globalization;
using System.Text;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Counters are told from energy by their shape, where no word of the header says which.</summary>
public sealed class CounterShapeTests : IDisposable
{
    private static readonly Site Berlin = Site.At("Test", 52, 13, "Europe/Berlin", "EUR");
    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    private Channel Read(string header, IEnumerable<double> values, int minutes, ReadOptions? options = null)
    {
        var text = new StringBuilder("time,").Append(header).Append('\n');
        var at = new LocalDateTime(2024, 5, 1, 0, 0);
        foreach (var value in values)
        {
            text.Append(at.ToString("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture)).Append(',').Append(value.ToString("R", CultureInfo.InvariantCulture)).Append('\n');
            at = at.PlusMinutes(minutes);
        }
        return Assert.Single(Readings.Load(_files.Write("table.csv", text.ToString()), Berlin, options).Channels);
    }

    /// <summary>Energy of the half hours of a clear day, 12 kWh together.</summary>
    private static double[] Day() => [.. Enumerable.Range(0, 48).Select(i => i is >= 16 and < 40 ? Math.Min(i - 15, 40 - i) * (12 / 156.0) : 0)];

    private static IEnumerable<double> Running(IEnumerable<double> energy, double from = 0)
    {
        foreach (var kwh in energy) yield return from += kwh;
    }

    [Theory]
    [InlineData("Total energy (kWh)")]
    [InlineData("PV (kWh)")]
    public void Numbers_that_rise_for_days_are_a_counter(string header)
    {
        var channel = Read(header, Running([.. Day(), .. Day(), .. Day()], 4000), 30);
        Assert.Equal(36, channel.Total.Kwh, 9);
        Assert.Equal((3 * 48, 0), (channel.CounterStates, channel.Resets));
    }

    [Fact]
    public void A_few_readings_under_a_header_that_speaks_of_a_reading_are_a_counter() =>
        Assert.Equal(300, Read("Reading (kWh)", [12_000, 12_100, 12_250, 12_300], 24 * 60).Total.Kwh, 9);

    [Fact]
    public void A_counter_that_begins_again_each_day_adds_up_to_the_days()
    {
        var channel = Read("Yield today (kWh)", Running(Day()).Concat(Running(Day())).Concat(Running(Day())), 30);
        Assert.Equal(36, channel.Total.Kwh, 9);
        Assert.Equal(0, channel.Resets);
    }

    [Fact]
    public void A_daily_counter_of_equal_steps_is_told_by_beginning_again()
    {
        var day = Enumerable.Range(0, 48).Select(i => 0.5 * Math.Clamp(i - 14, 0, 22)).ToArray();
        Assert.Equal(33, Read("Yield (kWh)", [.. day, .. day, .. day], 30).Total.Kwh, 9);
    }

    [Fact]
    public void What_a_daily_counter_shows_before_the_record_begins_is_listed_and_not_counted()
    {
        var text = new StringBuilder("time,Yield today (kWh)\n");
        var states = Running(Day()).Skip(24).Concat(Running(Day())).Concat(Running(Day())).ToArray();
        for (var i = 0; i < states.Length; i++)
            text.Append(CultureInfo.InvariantCulture, $"{new LocalDateTime(2024, 5, 1, 12, 0).PlusMinutes(30 * i):uuuu-MM-dd HH:mm},{states[i]:R}\n");
        var readings = Readings.Load(_files.Write("table.csv", text.ToString()), Berlin);
        // By hand: 1 + 2 + … + 9 of 156 parts of 12 kWh stand there already at noon; the rest of the first day and the other two are counted.
        Assert.Equal(36 - (12 * 45 / 156.0), Assert.Single(readings.Channels).Total.Kwh, 9);
        Assert.Equal(12 * 45 / 156.0, readings.Problems.Sum(p => p.UncountedKwh), 9);
    }

    [Fact]
    public void Energy_of_intervals_stays_energy()
    {
        var channel = Read("PV (kWh)", [.. Day(), .. Day(), .. Day()], 30);
        Assert.Equal(36, channel.Total.Kwh, 9);
        Assert.Null(channel.CounterStates);
    }

    [Fact]
    public void Energy_now_and_then_stays_energy()
    {
        // A generator that runs six times in twenty days: seldom enough to fall as seldom as a counter does.
        var values = new double[20 * 48];
        foreach (var i in new[] { 30, 190, 350, 510, 670, 830 }) values[i] = 3;
        Assert.Equal(18, Read("generator (kWh)", values, 30).Total.Kwh, 9);
    }

    [Fact]
    public void Numbers_that_go_up_and_down_are_energy_whatever_the_header_says() =>
        Assert.Equal(24, Read("Meter reading (kWh)", [.. Day(), .. Day().Select((v, i) => v * (i % 2 == 0 ? 0.8 : 1.2))], 30).Total.Kwh, 9);

    [Fact]
    public void Numbers_that_all_rise_by_one_step_tell_nothing_and_stay_energy() =>
        Assert.Null(Read("PV (kWh)", Enumerable.Range(0, 144).Select(i => i * 0.01), 30).CounterStates);

    [Theory]
    [InlineData("Meter reading (kWh)", 1, 1000)]
    [InlineData("Meter reading (kWh)", 1000, 1)]
    [InlineData("Meter reading (Wh)", 1000, 1)]
    [InlineData("Meter reading (Wh)", 1, 1000)]
    public void A_counter_that_goes_on_in_another_unit_is_brought_to_the_one_its_header_names(string header, double before, double after)
    {
        // 4000 kWh at first and 12 more a day, written in kWh (times 1) or in Wh (times 1000); the third day in the other unit.
        var states = Running([.. Day(), .. Day(), .. Day()], 4000);
        var channel = Read(header, states.Select((s, i) => Math.Round(s * (i < 96 ? before : after), 6)), 30);
        Assert.Equal(36, channel.Total.Kwh, 6);
        Assert.Equal(0, channel.Resets);
    }

    [Fact]
    public void The_user_has_the_last_word()
    {
        var options = new ReadOptions { Columns = [ColumnMeaning.Of("PV (kWh)", FlowKind.Generation)] };
        var states = Running([.. Day(), .. Day()], 100).ToArray();
        Assert.Equal(states.Sum(), Read("PV (kWh)", states, 30, options).Total.Kwh, 6);
    }
}
