using System.Globalization;
using AlderWeir;

namespace SolarEconomics.Tests.Demo;

public class CommittedFilesTests
{
    public static TheoryData<string> Names => [.. DemoScenario.Result.Files.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_generator_makes_the_committed_file_byte_for_byte(string name)
    {
        var committed = File.ReadAllBytes(Path.Combine(DemoScenario.Folder, name));
        Assert.True(DemoScenario.Result.Files[name].AsSpan().SequenceEqual(committed),
            $"data-demo/{name} differs from what the generator makes: dotnet run --project data-demo/generator");
    }

    [Fact]
    public void No_data_file_stands_in_the_folder_that_the_generator_does_not_make() =>
        Assert.Empty(Directory.GetFiles(DemoScenario.Folder).Select(f => Path.GetFileName(f)!).Except(DemoScenario.Result.Files.Keys));

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_file_says_in_its_first_lines_that_it_is_invented(string name) =>
        Assert.Contains("Invented data", string.Join('\n', DemoScenario.Text(name).Split('\n').Take(3)), StringComparison.Ordinal);

    [Theory]
    [MemberData(nameof(Names))]
    public void Lines_end_with_a_line_feed_alone(string name)
    {
        Assert.DoesNotContain('\r', DemoScenario.Text(name));
        Assert.EndsWith("\n", DemoScenario.Text(name), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void The_reader_s_culture_changes_no_byte(string culture)
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
        try
        {
            var made = Scenario.Make(Scenario.CommittedSeed);
            Assert.All(made.Files, file => Assert.Equal(DemoScenario.Result.Files[file.Key], file.Value));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Another_seed_makes_other_weather_and_the_same_receipts()
    {
        var other = Scenario.Make(2);
        Assert.NotEqual(DemoScenario.Result.Files["meter.csv"], other.Files["meter.csv"]);
        Assert.NotEqual(DemoScenario.Result.Files["counters.csv"], other.Files["counters.csv"]);
        Assert.Equal(DemoScenario.Result.Files["ledger.csv"], other.Files["ledger.csv"]);
    }
}
