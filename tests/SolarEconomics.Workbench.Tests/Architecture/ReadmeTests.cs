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
    public void A_kept_ratio_has_equal_checksums_or_is_not_counted_as_met() =>
        Assert.All(Directory.EnumerateDirectories(s_results).SelectMany(folder => KeptRun.Find<RatioLine>(folder, "ratios")!.Value.Lines),
            line => Assert.True(line.ChecksumsEqual || line.Met is not true, line.Work));

    [Fact]
    public void Only_what_stands_between_the_marks_is_written() =>
        Assert.Equal("a\n<!-- speed: b -->\ntable\n<!-- /speed -->\nc", ReadmeTables.Placed("a\n<!-- speed: b -->\nold\n<!-- /speed -->\nc", "table\n"));

    [Fact]
    public void A_readme_without_marks_is_refused_in_words() =>
        Assert.Contains("expected both", Assert.Throws<InvalidDataException>(() => ReadmeTables.Placed("no marks", "table")).Message, StringComparison.Ordinal);
}
