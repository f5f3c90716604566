using SolarEconomics.Benchmarks;

namespace SolarEconomics.Workbench.Tests;

public class ReadmeTests
{
    private static readonly string s_results = Repository.File("tests", "SolarEconomics.Benchmarks", "results");

    [Fact]
    public void The_speed_table_is_the_one_that_the_kept_results_give()
    {
        var tables = ReadmeTables.Of(s_results);
        Assert.NotEmpty(tables);
        Assert.True(tables == ReadmeTables.Between(File.ReadAllText(Repository.File("README.md"))),
            "The README's speed table differs from the kept results: run .ci/readme.");
    }

    [Fact]
    public void Every_kept_ratio_comes_from_equal_results()
    {
        var lines = Directory.EnumerateDirectories(s_results).SelectMany(folder => KeptRun.Find<RatioLine>(folder, "ratios")?.Lines ?? []).ToList();
        Assert.NotEmpty(lines);
        Assert.All(lines.Where(line => line.Missing is null), line => Assert.True(line.ChecksumsEqual, $"{line.Work}, {line.Baseline}"));
    }

    [Theory]
    [InlineData(100, true, true)]
    [InlineData(100, false, false)]
    [InlineData(19, true, false)]
    public void A_target_is_met_by_a_ratio_with_equal_results_only(double baselineNs, bool equal, bool met) =>
        Assert.Equal(met, new RatioLine { Work = "w", Per = "row", Items = 1, Baseline = "b", BaselineNs = baselineNs, OursNs = 1, Target = 20, ChecksumsEqual = equal }.Met);

    [Fact]
    public void Only_what_stands_between_the_marks_is_written() =>
        Assert.Equal("a\n<!-- speed: b -->\ntable\n<!-- /speed -->\nc", ReadmeTables.Placed("a\n<!-- speed: b -->\nold\n<!-- /speed -->\nc", "table\n"));

    [Fact]
    public void A_readme_without_marks_is_refused_in_words() =>
        Assert.Contains("expected both", Assert.Throws<InvalidDataException>(() => ReadmeTables.Placed("no marks", "table")).Message, StringComparison.Ordinal);
}
