using System.Net;
using System.Net.WebSockets;

namespace SolarEconomics.Workbench.Tests;

/// <summary>Only the browser that was given the address gets in. Asked by a bare client, which may send what a browser never would.</summary>
public sealed class PageHostTests : IAsyncLifetime, IDisposable
{
    private readonly Scratch scratch = new();
    private readonly HttpClientHandler handler = new() { AllowAutoRedirect = false, UseCookies = false };
    private PageHost host = null!;
    private HttpClient client = null!;

    public async Task InitializeAsync()
    {
        scratch.Notebook("one.ipynb", "# Is one enough?\n\nIt may be.", "1 + 1");
        host = await PageHost.StartAsync(Room.Around(scratch.Folder), new NotebookDesk(new Shared(_ => new FakeSession(), TimeProvider.System, new StateFolder(Path.Combine(scratch.Folder, "state")))), CancellationToken.None);
        client = new HttpClient(handler) { BaseAddress = host.Base };
    }

    [Fact]
    public async Task Without_the_cookie_nothing_is_served()
    {
        foreach (var path in new[] { "/", "/js/main.js", "/notebooks.json", "/vendor/plotly.min.js", "/frames/chart.html" })
            Assert.Equal(HttpStatusCode.Forbidden, (await client.GetAsync(path)).StatusCode);
    }

    [Fact]
    public async Task The_token_becomes_a_strict_cookie_that_no_script_can_read_and_leaves_the_address()
    {
        var answer = await client.GetAsync(host.AddressFor(null));
        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        Assert.Equal("/", answer.Headers.Location!.OriginalString);
        var cookie = answer.Headers.GetValues("Set-Cookie").Single();
        Assert.Contains("httponly", cookie, StringComparison.Ordinal);
        Assert.Contains("samesite=strict", cookie, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await Ask("/", await Cookie(answer))).StatusCode);
    }

    [Fact]
    public async Task The_token_lets_in_once()
    {
        var address = host.AddressFor(null);
        Assert.Equal(HttpStatusCode.SeeOther, (await client.GetAsync(address)).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await client.GetAsync(address)).StatusCode);
    }

    [Fact]
    public async Task A_guessed_token_does_not_burn_the_real_one()
    {
        Assert.Equal(HttpStatusCode.Forbidden, (await client.GetAsync("/?token=guess")).StatusCode);
        Assert.Equal(HttpStatusCode.SeeOther, (await client.GetAsync(host.AddressFor(null))).StatusCode);
    }

    [Theory]
    [InlineData("rebound.example")]
    [InlineData("rebound.example:80")]
    [InlineData("127.0.0.1:1")]
    public async Task A_foreign_name_for_this_machine_is_refused_even_with_the_cookie(string name)
    {
        var cookie = await LetIn();
        using var request = new HttpRequestMessage(HttpMethod.Get, "/") { Headers = { Host = name } };
        request.Headers.Add("Cookie", cookie);
        Assert.Equal(HttpStatusCode.Forbidden, (await client.SendAsync(request)).StatusCode);
    }

    [Theory]
    [InlineData("https://elsewhere.example")]
    [InlineData("null")]
    [InlineData("http://127.0.0.1:1")]
    public async Task A_request_from_another_page_is_refused_even_with_the_cookie(string origin)
    {
        var cookie = await LetIn();
        Assert.Equal(HttpStatusCode.Forbidden, (await Ask("/notebooks.json", cookie, origin)).StatusCode);
        await Assert.ThrowsAsync<WebSocketException>(() => Talk(cookie, origin));
    }

    [Fact]
    public async Task A_conversation_needs_the_cookie_and_says_where_it_comes_from()
    {
        var cookie = await LetIn();
        await Assert.ThrowsAsync<WebSocketException>(() => Talk("workbench=wrong", host.Base.GetLeftPart(UriPartial.Authority)));
        await Assert.ThrowsAsync<WebSocketException>(() => Talk(cookie, origin: null));
    }

    [Theory]
    [InlineData("/../SolarEconomics.Workbench.dll")]
    [InlineData("/%2e%2e/SolarEconomics.Workbench.dll")]
    [InlineData("/js/%2e%2e%2f%2e%2e%2fSolarEconomics.Workbench.dll")]
    [InlineData("/..%5cSolarEconomics.Workbench.dll")]
    [InlineData("//etc/passwd")]
    public async Task A_path_out_of_the_pages_folder_is_not_found(string path)
    {
        var answer = await Ask(path, await LetIn());
        Assert.True(answer.StatusCode is HttpStatusCode.NotFound or HttpStatusCode.BadRequest, $"{path}: {answer.StatusCode}");
    }

    [Fact]
    public async Task The_page_allows_no_inline_script_and_may_not_be_framed()
    {
        var policy = (await Ask("/", await LetIn())).Headers.GetValues("Content-Security-Policy").Single();
        Assert.Contains("script-src 'self';", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.StartsWith("default-src 'none'", policy, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_chart_frame_is_sandboxed_by_its_own_answer_too()
    {
        var policy = (await Ask("/frames/chart.html", await LetIn())).Headers.GetValues("Content-Security-Policy").Single();
        Assert.StartsWith("sandbox allow-scripts; default-src 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("connect-src", policy, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Notebooks_are_offered_by_the_question_each_answers()
    {
        var text = await (await Ask("/notebooks.json", await LetIn())).Content.ReadAsStringAsync();
        Assert.Equal("""[{"name":"notebooks/one.ipynb","question":"Is one enough?","about":"It may be.","problem":""}]""", text);
    }

    private async Task<string> LetIn() => await Cookie(await client.GetAsync(host.AddressFor(null)));

    private static Task<string> Cookie(HttpResponseMessage answer) => Task.FromResult(answer.Headers.GetValues("Set-Cookie").Single().Split(';')[0]);

    private async Task<HttpResponseMessage> Ask(string path, string cookie, string? origin = null)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri(host.Base.GetLeftPart(UriPartial.Authority) + path, new UriCreationOptions { DangerousDisablePathAndQueryCanonicalization = true }));
        request.Headers.Add("Cookie", cookie);
        if (origin is not null) request.Headers.Add("Origin", origin);
        return await client.SendAsync(request);
    }

    private async Task Talk(string cookie, string? origin)
    {
        using var socket = new ClientWebSocket();
        socket.Options.SetRequestHeader("Cookie", cookie);
        if (origin is not null) socket.Options.SetRequestHeader("Origin", origin);
        await socket.ConnectAsync(new Uri($"ws://{host.Base.Authority}/talk?notebook=notebooks/one.ipynb"), CancellationToken.None);
    }

    public async Task DisposeAsync() => await host.DisposeAsync();

    public void Dispose()
    {
        client.Dispose();
        handler.Dispose();
        scratch.Dispose();
    }
}
