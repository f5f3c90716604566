using System.Globalization;
using AlderWeir;

namespace SolarEconomics.Tests.Demo;

public class CounterAndLedgerFileTests
{
    private static TrueFlows Truth => DemoScenario.Truth;

    [Fact]
    public void The_second_hand_inverter_starts_at_4812_and_ends_at_that_plus_what_it_made()
    {
        var south = Readings("south roof");
        Assert.Equal(("2022-03-01", 4812), south[0]);
        Assert.Equal(("2025-02-28", 4812 + (long)Math.Floor(Truth.Generation[0].Sum())), south[^1]);
    }

    [Fact]
    public void The_ground_array_s_counter_starts_again_from_zero_once_and_counts_DC()
    {
        var ground = Readings("ground array").Select(r => r.Kwh).ToArray();
        var reset = Array.FindIndex(ground, 1, g => g < 100);
        Assert.Equal(ground[..reset].Order(), ground[..reset]);
        Assert.Equal(ground[reset..].Order(), ground[reset..]);
        var counted = ground[reset - 1] + ground[^1];
        var trueDcKwh = Truth.Generation[2].Sum() / Truth.GroundDcToAc;
        // What ran through between the last reading and the reset, two and a half summer days, is in no reading.
        Assert.InRange(trueDcKwh - counted, 0, 3 * 4.92 * 8);
    }

    [Fact]
    public void The_swapped_digits_show_as_a_week_brighter_than_the_sky_allows()
    {
        var south = Readings("south roof");
        var at = south.FindIndex(r => string.Equals(r.Date, "2023-07-30", StringComparison.Ordinal));
        // 3.78 kWp under a clear sky of 8 full-sun hours gives no more than 212 kWh in seven days.
        Assert.True(south[at + 1].Kwh - south[at].Kwh > 3.78 * 8 * 7);
    }

    [Fact]
    public void The_replaced_inverter_and_its_successor_have_counters_of_their_own()
    {
        Assert.Equal(("2022-04-20", 0), Readings("west roof first inverter")[0]);
        Assert.Equal(("2023-06-27", 0), Readings("west roof")[0]);
    }

    [Fact]
    public void A_photographed_reading_names_its_photo_and_its_uncertain_day()
    {
        var rows = DemoScenario.Rows("counters.csv");
        Assert.Contains(rows, r => r[4].EndsWith(".jpg", StringComparison.Ordinal));
        Assert.All(rows, r => Assert.Equal(r[3] != "0", r[4].Length > 0));
    }

    [Fact]
    public void The_ledger_runs_in_date_order_with_positive_amounts_in_EUR()
    {
        var rows = DemoScenario.Rows("ledger.csv");
        Assert.Equal(rows.Select(r => r[0]).Order(StringComparer.Ordinal), rows.Select(r => r[0]));
        Assert.All(rows, r => Assert.True(decimal.Parse(r[2], CultureInfo.InvariantCulture) >= 0));
        Assert.All(rows, r => Assert.Equal("EUR", r[3]));
        Assert.Contains(rows, r => r[1] == "warranty refused" && r[2] == "0.00");
    }

    private static List<(string Date, long Kwh)> Readings(string device) =>
        [.. DemoScenario.Rows("counters.csv").Where(r => r[1] == device).Select(r => (r[0], long.Parse(r[2], CultureInfo.InvariantCulture)))];
}
