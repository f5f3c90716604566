using System.Net;
using System.Net.WebSockets;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace SolarEconomics.Workbench.Tests;

/// <summary>Talks with a running program as the page does: the one-time address, the cookie, the messages.</summary>
internal sealed class HostConversation : IDisposable
{
    private readonly ClientWebSocket socket = new();
    private readonly string place;

    private HostConversation(string cookie, Uri address, string place) => (Cookie, Address, this.place) = (cookie, address, place);

    public string Cookie { get; }

    public Uri Address { get; }

    public static async Task<HostConversation> BeginAsync(string addressWithToken)
    {
        var address = new Uri(addressWithToken);
        using var handler = new HttpClientHandler { AllowAutoRedirect = false, UseCookies = false };
        using var client = new HttpClient(handler);
        using var answer = await client.GetAsync(address);
        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        var talk = new HostConversation(answer.Headers.GetValues("Set-Cookie").Single().Split(';')[0], new Uri(address.GetLeftPart(UriPartial.Authority)), answer.Headers.Location!.OriginalString[1..]);
        await talk.ConnectAsync();
        return talk;
    }

    /// <summary>Another tab of the same browser, at the same notebook.</summary>
    /// <param name="also">What its address says besides.</param>
    public async Task<HostConversation> AgainAsync(string also = "")
    {
        var talk = new HostConversation(Cookie, Address, place + also);
        await talk.ConnectAsync();
        return talk;
    }

    public Task SayAsync(PageCommand command) => SayRawAsync(JsonSerializer.Serialize(command, PageJson.Default.PageCommand));

    public Task SayRawAsync(string message) => socket.SendAsync(Encoding.UTF8.GetBytes(message), WebSocketMessageType.Text, endOfMessage: true, CancellationToken.None);

    /// <summary>The next message of the host; null once the line is gone.</summary>
    public async Task<JsonNode?> HearAsync()
    {
        using var message = new MemoryStream();
        var buffer = new byte[65536];
        try
        {
            while (true)
            {
                var part = await socket.ReceiveAsync(buffer.AsMemory(), CancellationToken.None);
                if (part.MessageType != WebSocketMessageType.Text) return null;
                message.Write(buffer, 0, part.Count);
                if (part.EndOfMessage) return JsonNode.Parse(Encoding.UTF8.GetString(message.ToArray()));
            }
        }
        catch (WebSocketException)
        {
            return null;
        }
    }

    private Task ConnectAsync()
    {
        socket.Options.SetRequestHeader("Cookie", Cookie);
        socket.Options.SetRequestHeader("Origin", Address.GetLeftPart(UriPartial.Authority));
        return socket.ConnectAsync(new Uri($"ws://{Address.Authority}/talk{place}"), CancellationToken.None);
    }

    public void Dispose() => socket.Dispose();
}
