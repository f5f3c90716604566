namespace SolarEconomics.Workbench.Tests;

/// <summary>Usage, exit codes and words of the command line, without a process of its own.</summary>
public sealed class CommandLineTests : IDisposable
{
    private readonly Scratch scratch = new();

    [Theory]
    [InlineData("nonsense")]
    [InlineData("open", "--bogus")]
    [InlineData("open", "missing.ipynb", "--no-browser")]
    [InlineData("report", "missing.ipynb")]
    [InlineData("report", "missing.ipynb", "--bare", "--out", "x.html")]
    [InlineData("report", "missing.ipynb", "--bare", "--out", "no/folder/x.html")]
    [InlineData("inspect")]
    [InlineData("inspect", "missing.csv")]
    [InlineData("run")]
    public async Task What_cannot_start_ends_with_2_and_says_why_in_words(params string[] arguments)
    {
        var (code, said) = await RunAsync(arguments);
        Assert.Equal(2, code);
        Assert.NotEqual("", said.Trim());
        Assert.DoesNotContain("   at ", said, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_malformed_notebook_is_refused_in_words()
    {
        var path = Path.Combine(scratch.Folder, "notebooks", "broken.ipynb");
        await File.WriteAllTextAsync(path, "{ not a notebook");
        var (code, said) = await RunAsync("report", path, "--bare", "--out", "x.html");
        Assert.Equal(2, code);
        Assert.Contains("broken.ipynb", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Inspect_prints_one_JSON_object_and_nothing_else()
    {
        var path = Path.Combine(scratch.Folder, "meter.csv");
        await File.WriteAllTextAsync(path, "start,import (kWh)\n2024-06-01 00:00,0.5\n2024-06-01 00:30,0.25\n");
        // How far it is, said where reading takes over a second, goes to the messages.
        var (answers, messages) = (new StringWriter(), new StringWriter());
        var code = await CommandLine.StartAsync(["inspect", path, "--zone", "Europe/Dublin", "--json"], new Io(answers, messages, IsTerminal: false) { Folder = scratch.Folder });
        Assert.Equal(0, code);
        var channel = System.Text.Json.Nodes.JsonNode.Parse(answers.ToString())!["files"]![0]!["channels"]![0]!;
        Assert.Equal(("import", 2, 0.75), ((string)channel["flow"]!, (int)channel["readings"]!, (double)channel["totalKwh"]!));
    }

    [Fact]
    public async Task Inspect_without_a_file_says_so_and_still_gives_JSON_to_who_asked_for_it()
    {
        var (answers, messages) = (new StringWriter(), new StringWriter());
        var code = await CommandLine.StartAsync(["inspect", "--json"], new Io(answers, messages, IsTerminal: false) { Folder = scratch.Folder });
        Assert.Equal(2, code);
        Assert.Empty(System.Text.Json.Nodes.JsonNode.Parse(answers.ToString())!["files"]!.AsArray());
        Assert.StartsWith("Found no file to inspect", messages.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Help_names_every_verb_with_an_example()
    {
        var (code, said) = await RunAsync("--help");
        Assert.Equal(0, code);
        foreach (var verb in new[] { "open", "run", "report", "inspect" }) Assert.Contains(verb, said, StringComparison.Ordinal);
        Assert.Contains("Examples:", said, StringComparison.Ordinal);
    }

    private async Task<(int Code, string Said)> RunAsync(params string[] arguments)
    {
        var (answers, messages) = (new StringWriter(), new StringWriter());
        var code = await CommandLine.StartAsync(arguments, new Io(answers, messages, IsTerminal: false) { Folder = scratch.Folder });
        return (code, answers.ToString() + messages);
    }

    public void Dispose() => scratch.Dispose();
}
