using System.Net;
using System.Net.WebSockets;
using System.Text;
using System.Text.Json.Nodes;

namespace SolarEconomics.Workbench.Tests;

/// <summary>Several pages at one notebook, pages that come back, and pages that are not ours.</summary>
public sealed class ManyPagesTests : IAsyncLifetime, IDisposable
{
    private readonly Scratch scratch = new();
    private PageHost host = null!;
    private string path = "";

    public async Task InitializeAsync()
    {
        path = scratch.Notebook("one.ipynb", "# One", "var a = 1;");
        var shared = new Shared(_ => new FakeSession(), TimeProvider.System, Scratch.StateBeside(path));
        shared.LetRun.Remember(SolarEconomics.Notebook.NotebookDocument.Load(path));
        host = await PageHost.StartAsync(Room.Around(scratch.Folder), new NotebookDesk(shared), CancellationToken.None);
    }

    [Fact]
    public async Task What_one_tab_does_the_other_shows_and_one_that_comes_back_is_told_everything()
    {
        using var one = await HostConversation.BeginAsync(host.AddressFor(path));
        using var other = await one.AgainAsync();
        await one.SayAsync(new EditStep("step-2", "var a = 2;"));
        Assert.Equal("var a = 2;", (string)(await Heard(other, "stepChanged"))["step"]!["text"]!);
        await other.SayAsync(new WorkOut(Extent.Everything));
        while ((string)(await Heard(one, "stepChanged"))["step"]!["state"]! != "done") { }
        using var back = await one.AgainAsync();
        var opened = (await Heard(back, "opened"))["notebook"]!;
        Assert.Equal(("var a = 2;", "done"), ((string)opened["steps"]![1]!["text"]!, (string)opened["steps"]![1]!["state"]!));
    }

    [Fact]
    public async Task A_message_of_more_than_four_megabytes_ends_the_conversation_and_the_others_go_on()
    {
        using var one = await HostConversation.BeginAsync(host.AddressFor(path));
        using var other = await one.AgainAsync();
        await one.SayAsync(new EditStep("step-2", new string('x', 5 << 20)));
        while (await one.HearAsync() is not null) { }
        await other.SayAsync(new EditStep("step-2", "var a = 3;"));
        Assert.Equal("var a = 3;", (string)(await Heard(other, "stepChanged"))["step"]!["text"]!);
    }

    [Fact]
    public async Task A_message_that_is_none_is_answered_in_words()
    {
        using var one = await HostConversation.BeginAsync(host.AddressFor(path));
        await one.SayRawAsync("{\"message\": \"formatDisk\"}");
        Assert.Contains("does not know", (string)(await Heard(one, "notice"))["words"]!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/copy?notebook=notebooks/one.ipynb")]
    [InlineData("/report?notebook=notebooks/one.ipynb")]
    [InlineData("/table.csv?notebook=notebooks/one.ipynb&table=step-2/1")]
    [InlineData("/table.json?notebook=notebooks/one.ipynb&table=step-2/1")]
    public async Task Files_are_given_to_our_own_page_only(string address)
    {
        using var client = new HttpClient(new HttpClientHandler { UseCookies = false }) { BaseAddress = host.Base };
        Assert.Equal(HttpStatusCode.Forbidden, (await client.GetAsync(address)).StatusCode);
        using var talk = await HostConversation.BeginAsync(host.AddressFor(path));
        using var crossSite = new HttpRequestMessage(HttpMethod.Get, address) { Headers = { { "Cookie", talk.Cookie }, { "Sec-Fetch-Site", "cross-site" } } };
        Assert.Equal(HttpStatusCode.Forbidden, (await client.SendAsync(crossSite)).StatusCode);
        using var post = new HttpRequestMessage(HttpMethod.Post, address) { Headers = { { "Cookie", talk.Cookie } } };
        Assert.Equal(HttpStatusCode.Forbidden, (await client.SendAsync(post)).StatusCode);
        using var traversal = new HttpRequestMessage(HttpMethod.Get, address.Replace("notebooks/one.ipynb", "../../etc/passwd", StringComparison.Ordinal)) { Headers = { { "Cookie", talk.Cookie } } };
        Assert.Contains((await client.SendAsync(traversal)).StatusCode, new[] { HttpStatusCode.NotFound, HttpStatusCode.Gone });
    }

    [Fact]
    public async Task A_copy_and_a_report_are_kept_as_files_and_never_shown_in_our_name()
    {
        using var talk = await HostConversation.BeginAsync(host.AddressFor(path));
        await talk.SayAsync(new EditStep("step-2", "var a = 4;"));
        await Heard(talk, "stepChanged");
        using var client = new HttpClient(new HttpClientHandler { UseCookies = false }) { BaseAddress = host.Base };
        foreach (var (what, holds) in new[] { ("copy", "\"var a = 4;\""), ("report", "var a = 4;") })
        {
            using var request = new HttpRequestMessage(HttpMethod.Get, $"/{what}?notebook=notebooks/one.ipynb") { Headers = { { "Cookie", talk.Cookie } } };
            using var answer = await client.SendAsync(request);
            Assert.Equal("attachment", answer.Content.Headers.ContentDisposition!.DispositionType);
            Assert.StartsWith("sandbox", answer.Headers.GetValues("Content-Security-Policy").Single(), StringComparison.Ordinal);
            Assert.Contains(holds, await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        }
    }

    private static async Task<JsonNode> Heard(HostConversation talk, string message)
    {
        while (await talk.HearAsync().WaitAsync(TimeSpan.FromSeconds(30)) is { } told)
            if ((string)told["message"]! == message) return told;
        throw new InvalidOperationException($"The line ended before {message} was told.");
    }

    public async Task DisposeAsync() => await host.DisposeAsync();

    public void Dispose() => scratch.Dispose();
}
