namespace SolarEconomics.Charts.Tests;

public sealed class MonthsChartTests
{
    [Fact]
    public void The_stack_has_a_fixed_order_whatever_the_order_of_the_list()
    {
        string[] expected = ["used directly", "used out of the battery", "exported", "lost", "readings missing"];
        Assert.Equal(expected, Names(MonthSamples.ThreeYears().Chart()));
        Assert.Equal(expected, Names(MonthSamples.ThreeYears().Reverse().ToList().Chart()));
    }

    [Fact]
    public void A_month_that_is_not_in_the_list_counts_as_missing_whole()
    {
        var strip = Figures.Traces(MonthSamples.ThreeYears().Chart(), "bar").Single(t => (string?)t["name"] == "readings missing");
        var at = strip["x"]!.AsArray().Select(x => (string)x!).ToList().IndexOf("2023-11-01");
        Assert.Equal(1.0, (double)strip["y"]![at]!);
        Assert.Null(strip["y"]![0]);
    }

    [Fact]
    public void Without_a_missing_reading_there_is_no_strip()
    {
        var whole = MonthSamples.ThreeYears().Take(6).ToList();
        Assert.DoesNotContain("readings missing", Names(whole.Chart()));
        Assert.Null(Figures.Of(whole.Chart())["layout"]!["yaxis2"]);
    }

    [Fact]
    public void The_words_say_how_much_where_it_went_and_what_is_missing() => Assert.Equal(
        "14,727 kWh of generation from Mar 2022 to Feb 2025: 34 % used directly, 15 % used out of the battery, 47 % exported and 4 % lost. " +
        "Readings are missing in 3 of 36 months. In 54 hours the plant could have made more than was counted.", MonthSamples.ThreeYears().Chart().Words);

    [Fact]
    public void Months_without_any_generation_are_said_and_not_divided_by()
    {
        var none = MonthSamples.ThreeYears().Take(2).Select(m => m with { UsedDirectlyKwh = 0, UsedFromStorageKwh = 0, ExportedKwh = 0, LostKwh = 0 }).ToList();
        Assert.Equal("0.0 kWh of generation counted from Mar 2022 to Apr 2022.", none.Chart().Words);
        Assert.DoesNotContain("NaN", none.Chart().FigureJson, StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_list_is_refused_in_words() => Assert.StartsWith(
        "Found 0 months of energy, expected at least 1.", Assert.Throws<ArgumentException>(() => Array.Empty<MonthOfEnergy>().Chart()).Message, StringComparison.Ordinal);

    private static IEnumerable<string?> Names(SolarChart chart) => Figures.Traces(chart, "bar").Select(t => (string?)t["name"]);
}
