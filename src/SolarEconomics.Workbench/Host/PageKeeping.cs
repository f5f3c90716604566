using Microsoft.AspNetCore.Http;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>Files that the page's reader keeps through the browser: the notebook as it is now, and its report. They are saved, never shown in our own name.</summary>
internal static class PageKeeping
{
    public static Task Copy(HttpContext context, Room room, NotebookDesk desk) =>
        Keep(context, room, desk, ".ipynb", "application/x-ipynb+json", (text, _) => text);

    public static Task Report(HttpContext context, Room room, NotebookDesk desk) =>
        Keep(context, room, desk, ".html", "text/html; charset=utf-8", (text, name) => ReportPage.Write(NotebookDocument.Parse(text, name), name));

    private static async Task Keep(HttpContext context, Room room, NotebookDesk desk, string end, string kind, Func<string, string, string> write)
    {
        var response = context.Response;
        if (room.Find(context.Request.Query["notebook"].ToString()) is not { } path)
        {
            response.StatusCode = StatusCodes.Status404NotFound;
            response.ContentType = "text/plain; charset=utf-8";
            await response.WriteAsync("Found no such notebook.");
            return;
        }
        var name = Path.GetFileNameWithoutExtension(path);
        var text = write(await desk.At(path).TextAsync(), name);
        response.ContentType = kind;
        response.Headers.ContentDisposition = $"attachment; filename*=UTF-8''{Uri.EscapeDataString(name + end)}";
        response.Headers.ContentSecurityPolicy = "sandbox; default-src 'none'";
        response.Headers.XContentTypeOptions = "nosniff";
        response.Headers.CacheControl = "no-store";
        await response.WriteAsync(text);
    }
}
