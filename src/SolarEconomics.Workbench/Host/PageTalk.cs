using System.Net.WebSockets;
using System.Text.Json;
using Microsoft.AspNetCore.Http;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>The conversation with one page: commands in, events out, each message bounded.</summary>
internal static class PageTalk
{
    /// <summary>No text of a step is longer than this; a longer message ends the conversation.</summary>
    private const int LargestMessage = 4 << 20;

    /// <summary>Closing with this number says that coming back is of no use.</summary>
    private const WebSocketCloseStatus NothingHere = (WebSocketCloseStatus)4004;

    public static async Task Talk(HttpContext context, Room room, NotebookDesk desk)
    {
        if (!context.WebSockets.IsWebSocketRequest) { context.Response.StatusCode = StatusCodes.Status400BadRequest; return; }
        using var socket = await context.WebSockets.AcceptWebSocketAsync();
        var page = new PageLine();
        var notebook = Open(context.Request.Query["notebook"].ToString(), room, desk, page);
        var sending = SendAll(socket, page, notebook is null ? NothingHere : WebSocketCloseStatus.NormalClosure, context.RequestAborted);
        try
        {
            if (notebook is not null)
            {
                notebook.Join(page, context.Request.Query["have"].ToString());
                try { await HearAll(socket, notebook, page, context.RequestAborted); }
                finally { notebook.Leave(page); }
            }
            page.Close();
            await sending;
        }
        catch (Exception failure) when (failure is WebSocketException or OperationCanceledException)
        {
            // The page was closed or the machine slept; the page comes back by itself.
            LocalLog.Current.Write(failure);
        }
    }

    private static OpenNotebook? Open(string name, Room room, NotebookDesk desk, PageLine page)
    {
        try
        {
            if (room.Find(name) is { } path) return desk.At(path);
            page.Send(new Notice($"Found no notebook {name} in {room.Folder}."));
        }
        catch (Exception failure) when (failure is NotebookFormatException or IOException or UnauthorizedAccessException)
        {
            page.Send(new Notice(failure.Message));
        }
        return null;
    }

    private static async Task HearAll(WebSocket socket, OpenNotebook notebook, PageLine page, CancellationToken gone)
    {
        var buffer = new byte[16384];
        using var message = new MemoryStream();
        while (true)
        {
            var part = await socket.ReceiveAsync(buffer.AsMemory(), gone);
            if (part.MessageType != WebSocketMessageType.Text || message.Length + part.Count > LargestMessage) break;
            message.Write(buffer, 0, part.Count);
            if (!part.EndOfMessage) continue;
            try
            {
                if (JsonSerializer.Deserialize(message.ToArray(), PageJson.Default.PageCommand) is { } command) notebook.Ask(command, page);
            }
            catch (JsonException failure)
            {
                LocalLog.Current.Write(failure);
                page.Send(new Notice("Found a message that this program does not know. Reload the page."));
            }
            message.SetLength(0);
        }
        await socket.CloseOutputAsync(WebSocketCloseStatus.NormalClosure, null, gone);
    }

    private static async Task SendAll(WebSocket socket, PageLine page, WebSocketCloseStatus end, CancellationToken gone)
    {
        await foreach (var written in page.Outgoing.ReadAllAsync(gone))
        {
            if (socket.State == WebSocketState.Open) await socket.SendAsync(written, WebSocketMessageType.Text, endOfMessage: true, gone);
        }
        if (socket.State is WebSocketState.Open) await socket.CloseOutputAsync(end, null, gone);
    }
}
