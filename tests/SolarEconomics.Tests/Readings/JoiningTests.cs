using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Monthly files of one meter: what lies between them, what stands in two of them, what is written otherwise in one.</summary>
public sealed class JoiningTests : IDisposable
{
    private static readonly Site Utc = Site.At("Test mill", 53, -9, "UTC", "EUR");
    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    [Fact]
    public void What_a_counter_counted_between_two_files_is_energy_too()
    {
        // By hand: 100 to 103 in January, 103 to 104.5 between, 104.5 to 106 in February.
        var readings = Load(("jan.csv", States("2024-01-30 00:00,100\n2024-01-31 00:00,103")), ("feb.csv", States("2024-02-01 00:00,104.5\n2024-02-02 00:00,106")));
        var channel = Assert.Single(readings.Channels);
        Assert.Equal([3, 1.5, 1.5], channel.Kwh.ToArray());
        Assert.Equal((Instant.FromUtc(2024, 1, 31, 0, 0), Instant.FromUtc(2024, 2, 1, 0, 0)), (channel.Starts[1], channel.Ends[1]));
        Assert.Equal(4, channel.CounterStates);
        var problem = Assert.Single(readings.Problems, p => p.Found.Contains("where one file ends", StringComparison.Ordinal));
        Assert.Equal(Severity.Note, problem.Severity);
        Assert.Contains("the 1.5 kWh between are counted as one interval", problem.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void The_order_in_which_files_are_named_changes_nothing()
    {
        (string, string)[] files = [("feb.csv", States("2024-02-01 00:00,104.5\n2024-02-02 00:00,106")), ("jan.csv", States("2024-01-30 00:00,100\n2024-01-31 00:00,103"))];
        Assert.Equal(6, Assert.Single(Load(files).Channels).Total.Kwh);
    }

    [Fact]
    public void Files_that_meet_or_overlap_count_nothing_between_them()
    {
        var readings = Load(("a.csv", States("2024-01-30 00:00,100\n2024-01-31 00:00,103")), ("b.csv", States("2024-01-31 00:00,103\n2024-02-01 00:00,106")), ("c.csv", States("2024-01-31 00:00,103\n2024-02-01 00:00,106")));
        Assert.Equal(6, Assert.Single(readings.Channels).Total.Kwh);
        Assert.DoesNotContain(readings.Problems, p => p.Found.Contains("where one file ends", StringComparison.Ordinal));
    }

    [Fact]
    public void A_counter_that_was_reset_between_two_files_is_doubtful()
    {
        var readings = Load(("jan.csv", States("2024-01-30 00:00,100\n2024-01-31 00:00,103")), ("feb.csv", States("2024-02-01 00:00,2\n2024-02-02 00:00,5")));
        var channel = Assert.Single(readings.Channels);
        Assert.Equal([3, 2, 3], channel.Kwh.ToArray());
        Assert.Equal(1, channel.Resets);
        Assert.Equal(Quality.Doubtful, channel.Quality[1]);
    }

    [Fact]
    public void Headers_in_another_case_or_unit_are_one_channel_and_said()
    {
        var readings = Load(("a.csv", "time,PV (kWh)\n2024-01-01 00:00,1\n2024-01-01 01:00,2\n"), ("b.csv", "time,pv (Wh)\n2024-01-01 02:00,3000\n2024-01-01 03:00,4000\n"));
        var channel = Assert.Single(readings.Channels);
        Assert.Equal(("PV", 10.0, 4), (channel.Name, channel.Total.Kwh, channel.Count));
        var problem = Assert.Single(readings.Problems);
        Assert.Equal((Severity.Note, "\"pv\" in Wh in b.csv, where a.csv says \"PV\" in kWh"), (problem.Severity, problem.Found));
    }

    [Fact]
    public void Two_columns_of_one_file_that_differ_in_case_stay_two_channels()
    {
        static string File(int day) => $"time,Import (kWh),import (kWh)\n2024-01-0{day} 00:00,1,2\n2024-01-0{day} 01:00,1,2\n";
        Assert.Equal([4.0, 8.0], Load(("a.csv", File(1)), ("b.csv", File(2))).Channels.Select(c => c.Total.Kwh));
    }

    [Fact]
    public void A_unit_that_stands_in_the_name_itself_makes_no_other_channel()
    {
        var readings = Load(("a.csv", "time,grid_import_kwh\n2024-01-01 00:00,1\n2024-01-01 01:00,1\n"), ("b.csv", "time,Grid_Import_Wh\n2024-01-01 02:00,1000\n2024-01-01 03:00,1000\n"));
        Assert.Equal(4, Assert.Single(readings.Channels).Total.Kwh);
    }

    [Fact]
    public void Typed_counters_whose_names_differ_in_case_are_one()
    {
        var readings = Load(("a.csv", "date,device,kwh\n2024-01-01,Roof,10\n"), ("b.csv", "date,device,kwh\n2024-02-01,roof,30\n"));
        Assert.Equal(30, Assert.Single(readings.Counters).CountedKwh);
    }

    [Fact]
    public void An_overlap_that_disagrees_shows_both_values()
    {
        var readings = Load(("a.csv", "time,pv (kWh)\n2024-01-01 00:00,1\n2024-01-01 01:00,2\n"), ("b.csv", "time,pv (kWh)\n2024-01-01 01:00,2.5\n2024-01-01 02:00,3\n"));
        Assert.Equal(6, Assert.Single(readings.Channels).Total.Kwh);
        Assert.Equal("\"pv\" at 2024-01-01T01:00:00Z in b.csv too, 2.5 kWh over 60 minutes where another file has 2 kWh in an interval that overlaps", Assert.Single(readings.Problems, p => p.Severity == Severity.Doubtful).Found);
    }

    [Fact]
    public void Energy_and_numbers_without_a_unit_stay_apart()
    {
        var readings = Load(("a.csv", "time,PV (kWh)\n2024-01-01 00:00,1\n2024-01-01 01:00,2\n"), ("b.csv", "time,PV\n2024-01-01 02:00,3000\n2024-01-01 03:00,4000\n"));
        Assert.Equal(["kWh", "unknown"], readings.Channels.Select(c => c.Unit));
    }

    private static string States(string rows) => $"time,lifetime counter (kWh)\n{rows}\n";

    private Readings Load(params (string Name, string Text)[] files) => Readings.Load([.. files.Select(f => _files.Write(f.Name, f.Text))], Utc);
}
