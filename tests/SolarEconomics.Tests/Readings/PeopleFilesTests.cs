using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Tables as devices, retailers and spreadsheets write them, invented; totals worked by hand.</summary>
public sealed class PeopleFilesTests : IDisposable
{
    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    private InspectedFile Look(IEnumerable<string> lines) => Assert.Single(Inspection.Of([_files.Write("table.csv", string.Join('\n', lines) + "\n")], "Europe/Berlin").Files);

    private static string Hour(int hour) => hour.ToString("00", CultureInfo.InvariantCulture);

    [Fact]
    public void Marks_for_no_value_are_missing_and_nothing_is_lost()
    {
        string[] marks = ["---", "N/A", "null", "", "-", "NaN", "n.a.", "–"];
        var file = Look(["Time,Import (kWh)", .. Enumerable.Range(0, 24).Select(h => $"2024-05-01 {Hour(h)}:00,{(h is >= 3 and < 11 ? marks[h - 3] : "1")}")]);
        var channel = Assert.Single(file.Channels);
        // By hand: 24 hours less 8 marks, 1 kWh each.
        Assert.Equal((16.0, 8, 0), (channel.TotalKwh, channel.Missing, file.ExitCode));
        Assert.Empty(file.Problems);
    }

    [Fact]
    public void A_time_of_day_that_is_called_the_end_ends_its_interval()
    {
        var file = Look(["Datum;Uhrzeit bis;Bezug (kWh)", .. Enumerable.Range(1, 96).Select(i => $"01.05.2024;{Hour(i * 15 / 60)}:{Hour(i * 15 % 60)};0,25")]);
        var channel = Assert.Single(file.Channels);
        // By hand: 96 quarters of 0.25 kWh, from midnight to midnight in summer time.
        Assert.Equal((24.0, 96, 1), (channel.TotalKwh, channel.Readings, file.LocalDays));
        Assert.Equal((Instant.FromUtc(2024, 4, 30, 22, 0), Instant.FromUtc(2024, 5, 1, 22, 0)), (channel.Start, channel.End));
    }

    [Fact]
    public void Billing_periods_that_name_their_last_day_cover_it()
    {
        var file = Look(["From,To,Usage (kWh),Feed-in (kWh)", "2024-01-05,2024-02-04,300,120", "2024-02-05,2024-03-04,280,150", "2024-03-05,2024-04-03,250,240"]);
        // By hand: 300 + 280 + 250 and 120 + 150 + 240; 27 + 29 + 31 + 3 days.
        Assert.Equal([(FlowKind.Use, 830.0), (FlowKind.Export, 510.0)], file.Channels.Select(c => (c.Flow, c.TotalKwh!.Value)));
        Assert.Equal(90, file.LocalDays);
    }

    [Fact]
    public void A_signed_net_register_is_parted_and_says_which_way_it_was_read()
    {
        var file = Look(["Time,Net grid (kWh)", .. Enumerable.Range(0, 24).Select(h => $"2024-05-01 {Hour(h)}:00,{(h is >= 9 and < 15 ? "-0.5" : "1")}")]);
        // By hand: 18 hours of 1 kWh in, 6 hours of half a kWh out.
        Assert.Equal([(FlowKind.Import, 18.0), (FlowKind.Export, 3.0)], file.Channels.Select(c => (c.Flow, c.TotalKwh!.Value)));
        Assert.Contains("If it is the other way round, correct the column", Assert.Single(file.Problems).Expected);
    }

    [Fact]
    public void Months_by_name_a_counter_of_the_day_and_power_each_five_minutes_give_their_totals()
    {
        Assert.Equal((950.0, 121), (Look(["Month,Generation (kWh)", "Jan 2024,100", "Feb 2024,150", "Mar 2024,300", "Apr 2024,400"]) is var months ? months.Channels[0].TotalKwh!.Value : 0, months.LocalDays));
        var today = Look(["Time,PV energy today (kWh)", .. Enumerable.Range(0, 72).Select(i => $"2024-05-0{1 + (i / 24)} {Hour(i % 24)}:00,{(i % 24 is < 7 or >= 22 ? 0 : Math.Min(12, (i % 24) - 6))}")]);
        // By hand: each day rises to 12 kWh and begins again.
        Assert.Equal(36.0, today.Channels[0].TotalKwh);
        var power = Look(["Time,PV (W)", .. Enumerable.Range(0, 288).Select(i => $"2024-05-01 {Hour(i / 12)}:{Hour(i % 12 * 5)}:00,{(i is >= 72 and < 216 ? 1200 : 0)}")]);
        // By hand: 12 hours of 1.2 kW.
        Assert.Equal(14.4, power.Channels[0].TotalKwh!.Value, 9);
    }
}
