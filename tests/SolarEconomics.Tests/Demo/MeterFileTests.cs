using AlderWeir;

namespace SolarEconomics.Tests.Demo;

public class MeterFileTests
{
    private static readonly string[] Stamps = [.. DemoScenario.MeterRows.Value.Select(r => r[0])];

    private static TrueFlows Truth => DemoScenario.Truth;

    [Fact]
    public void Three_years_are_52608_half_hours() => Assert.Equal(1096 * 48, Stamps.Length);

    [Theory]
    [InlineData("2022-10-30")]
    [InlineData("2023-10-29")]
    [InlineData("2024-10-27")]
    public void The_repeated_autumn_hour_stands_twice_in_the_order_of_time(string day)
    {
        var rows = Stamps.Where(s => s.StartsWith(day, StringComparison.Ordinal)).ToArray();
        Assert.Equal(50, rows.Length);
        Assert.Equal([$"{day} 01:00", $"{day} 01:30", $"{day} 01:00", $"{day} 01:30", $"{day} 02:00"], rows[2..7]);
    }

    [Theory]
    [InlineData("2022-03-27")]
    [InlineData("2023-03-26")]
    [InlineData("2024-03-31")]
    public void The_skipped_spring_hour_is_absent(string day)
    {
        var rows = Stamps.Where(s => s.StartsWith(day, StringComparison.Ordinal)).ToArray();
        Assert.Equal(46, rows.Length);
        Assert.Equal([$"{day} 00:30", $"{day} 02:00"], rows[1..3]);
    }

    [Theory]   // counted by hand from the dates in data-demo/README.md
    [InlineData("import (kWh)", 39 + 160 + 77 + 12)]
    [InlineData("export (kWh)", 39 + 160 + 10 + 77)]
    [InlineData("generation south roof (kWh)", 4 * 48 + 24)]
    [InlineData("generation west roof (kWh)", 22 * 48)]
    [InlineData("generation ground array (kWh)", 153 * 48 + 2)]
    [InlineData("battery charge (kWh)", 48)]
    [InlineData("battery discharge (kWh)", 48)]
    [InlineData("battery full", 48)]
    public void The_holes_are_where_the_story_says(string column, int missing) =>
        Assert.Equal(missing, DemoScenario.Column(column).Count(v => v is null));

    public static TheoryData<string, double> Records => new()
    {
        { "import (kWh)", 1 }, { "export (kWh)", 1 }, { "generation south roof (kWh)", 1 }, { "generation west roof (kWh)", 1 },
        { "generation ground array (kWh)", 1 / 0.955 }, { "battery charge (kWh)", 1 }, { "battery discharge (kWh)", 1 },
    };

    [Theory]
    [MemberData(nameof(Records))]
    public void What_is_recorded_is_the_true_flow_to_a_watt_hour_at_its_measurement_point(string column, double factor)
    {
        var recorded = DemoScenario.Column(column);
        var truth = TrueOf(column);
        Assert.DoesNotContain(Enumerable.Range(0, truth.Length), i => recorded[i] is double kwh && Math.Abs(kwh - (truth[i] * factor)) > 0.001);
        var known = Enumerable.Range(0, truth.Length).Where(i => recorded[i] is not null).ToArray();
        // Rounding must not add up: whole registers lose at most a watt-hour at each edge of a hole.
        Assert.InRange(known.Sum(i => recorded[i]!.Value) - (known.Sum(i => truth[i]) * factor), -0.01, 0.01);
    }

    [Fact]
    public void An_open_isolator_halves_the_south_roof_for_eleven_days()
    {
        var before = Ratio("2024-04-15", "2024-05-03");
        Assert.InRange(Ratio("2024-05-03", "2024-05-14") / before, 0.44, 0.56);
        Assert.InRange(Ratio("2024-05-14", "2024-06-01") / before, 0.90, 1.10);
    }

    /// <summary>South roof over ground array between two days.</summary>
    private static double Ratio(string from, string until)
    {
        var south = DemoScenario.Column("generation south roof (kWh)");
        var ground = DemoScenario.Column("generation ground array (kWh)");
        var rows = Enumerable.Range(0, Stamps.Length)
            .Where(i => string.CompareOrdinal(Stamps[i], from) >= 0 && string.CompareOrdinal(Stamps[i], until) < 0).ToArray();
        return rows.Sum(i => south[i]!.Value) / rows.Sum(i => ground[i]!.Value);
    }

    private static double[] TrueOf(string column) => column switch
    {
        "import (kWh)" => Truth.Imported,
        "export (kWh)" => Truth.Exported,
        "battery charge (kWh)" => Truth.Stored,
        "battery discharge (kWh)" => Truth.Delivered,
        _ => Truth.Generation[Truth.ArrayNames.ToList().FindIndex(a => column.Contains(a, StringComparison.Ordinal))],
    };
}
