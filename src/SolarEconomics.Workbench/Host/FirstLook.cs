using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Http;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>The notebook as it stands, sent along with the page itself: its answers are shown before a conversation has begun.</summary>
internal static class FirstLook
{
    /// <summary>The message that tells the page everything, as JSON that may stand in a page; empty where no notebook is asked for or it cannot be opened: the conversation then says why.</summary>
    public static async Task<string> Of(HttpContext context, Room room, NotebookDesk desk)
    {
        if (room.Find(context.Request.Query["notebook"].ToString()) is not { } path) return "";
        try { return Encoding.UTF8.GetString(await desk.At(path).OpenedAsync()); }
        catch (Exception failure) when (failure is NotebookFormatException or IOException or UnauthorizedAccessException or OperationCanceledException)
        {
            LocalLog.Current.Write(failure);
            return "";
        }
    }

    /// <summary>By this the host knows again what a page has been sent with its own file.</summary>
    public static string MarkOf(ReadOnlySpan<byte> message) => Convert.ToHexStringLower(SHA256.HashData(message).AsSpan(0, 16));
}
