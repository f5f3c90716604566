using System.Net;
using System.Text.RegularExpressions;

namespace SolarEconomics.Workbench.Tests;

/// <summary>The page brings its notebook along, and its modules as one script.</summary>
public sealed partial class FirstLookTests : IAsyncLifetime, IDisposable
{
    private readonly Scratch scratch = new();
    private readonly HttpClient client = new(new HttpClientHandler { UseCookies = false });
    private PageHost host = null!;
    private string path = "";

    public async Task InitializeAsync()
    {
        path = scratch.Notebook("one.ipynb", "# One </script><b>", "var a = \"</script>\";");
        host = await PageHost.StartAsync(Room.Around(scratch.Folder), new NotebookDesk(new Shared(_ => new FakeSession(), TimeProvider.System, Scratch.StateBeside(path))), CancellationToken.None);
    }

    [Fact]
    public async Task A_page_brings_its_notebook_along_and_is_not_told_twice()
    {
        using var talk = await HostConversation.BeginAsync(host.AddressFor(path));
        var page = await Read(talk, "/?notebook=notebooks/one.ipynb");
        var (mark, message) = Sent().Match(page) is { Success: true } sent ? (sent.Groups["mark"].Value, sent.Groups["message"].Value) : throw new InvalidOperationException(page);
        Assert.DoesNotContain("<", message, StringComparison.Ordinal);
        var opened = await talk.HearAsync();
        Assert.Equal(opened!.ToJsonString(), System.Text.Json.Nodes.JsonNode.Parse(message)!.ToJsonString());

        using var knows = await talk.AgainAsync($"&have={mark}");
        await knows.SayAsync(new EditStep("step-2", "var a = 2;"));
        Assert.Equal("stepChanged", (string?)(await knows.HearAsync())!["message"]);
        using var knewBefore = await talk.AgainAsync($"&have={mark}");
        Assert.Equal("opened", (string?)(await knewBefore.HearAsync())!["message"]);
    }

    [Theory]
    [InlineData("/?notebook=notebooks/none.ipynb")]
    [InlineData("/?notebook=../../etc/passwd")]
    [InlineData("/")]
    public async Task Where_no_notebook_can_be_shown_the_page_comes_without_one(string address)
    {
        using var talk = await HostConversation.BeginAsync(host.AddressFor(path));
        Assert.Contains("id=\"opened\" data-mark=\"" + FirstLook.MarkOf([]) + "\"></script>", await Read(talk, address), StringComparison.Ordinal);
    }

    [Fact]
    public void Modules_are_joined_each_once_after_those_it_uses()
    {
        var folder = Path.Combine(Sources.Root, "src", "SolarEconomics.Workbench", "wwwroot", "js");
        var script = JoinedModules.Of("main.js", name => File.ReadAllText(Path.Combine(folder, name)));
        var joined = Joined().Matches(script).Select(match => match.Groups["name"].Value).ToList();
        Assert.Equal(joined.Distinct(), joined);
        // The field for code is loaded later, by itself.
        Assert.Equal(Directory.EnumerateFiles(folder).Select(Path.GetFileName).Except(["editor.js"]).Order(StringComparer.Ordinal), joined.Order(StringComparer.Ordinal));
        Assert.DoesNotMatch(@"(?m)^(import \{|export )", script);
        foreach (Match use in Use().Matches(script)) Assert.True(script.IndexOf($"of[\"{use.Groups["name"].Value}\"] = ", StringComparison.Ordinal) < use.Index, use.Value);
    }

    private async Task<string> Read(HostConversation talk, string address)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri(host.Base, address)) { Headers = { { "Cookie", talk.Cookie } } };
        using var answer = await client.SendAsync(request);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("no-store", answer.Headers.CacheControl?.ToString());
        return await answer.Content.ReadAsStringAsync();
    }

    public async Task DisposeAsync() => await host.DisposeAsync();

    public void Dispose()
    {
        client.Dispose();
        scratch.Dispose();
    }

    [GeneratedRegex("<script type=\"application/json\" id=\"opened\" data-mark=\"(?<mark>\\w+)\">(?<message>.*?)</script>", RegexOptions.Singleline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Sent();

    [GeneratedRegex("^of\\[\"(?<name>[\\w.-]+)\"\\] = ", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Joined();

    [GeneratedRegex("\\} = of\\[\"(?<name>[\\w.-]+)\"\\];", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Use();
}
