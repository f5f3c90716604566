using System.Globalization;
using System.Text;
using Microsoft.AspNetCore.Http;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>Pages of a long table that a session holds, for the page to show or for a file.</summary>
internal static class PageTables
{
    private const int LargestPage = 500;

    public static async Task Show(HttpContext context, Room room, NotebookDesk desk)
    {
        if (await Read(context, room, desk, LargestPage, forFile: false) is { } page) await context.Response.WriteAsJsonAsync(page, PageJson.Default.TablePage);
    }

    public static async Task Keep(HttpContext context, Room room, NotebookDesk desk)
    {
        if (await Read(context, room, desk, TableQuery.Most, forFile: true) is not { } page) return;
        context.Response.ContentType = "text/csv; charset=utf-8";
        context.Response.Headers.ContentDisposition = "attachment; filename=\"table.csv\"";
        await context.Response.WriteAsync(Csv(page));
    }

    private static async Task<TablePage?> Read(HttpContext context, Room room, NotebookDesk desk, int most, bool forFile)
    {
        context.Response.Headers.CacheControl = "no-store";
        context.Response.Headers.XContentTypeOptions = "nosniff";
        var asked = context.Request.Query;
        int? Number(string name) => int.TryParse(asked[name], NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
        var query = new TableQuery(asked["table"].ToString(), Number("from") ?? 0, Math.Min(Number("count") ?? most, most), Number("sort"), asked["down"] == "1", asked["find"].ToString(), forFile);
        var page = room.Find(asked["notebook"].ToString()) is { } path ? await desk.At(path).TableAsync(query) : null;
        if (page is not null) return page;
        context.Response.StatusCode = StatusCodes.Status410Gone;
        context.Response.ContentType = "text/plain; charset=utf-8";
        await context.Response.WriteAsync("The session does not hold this table any more. Work its step out again.");
        return null;
    }

    private static string Csv(TablePage page)
    {
        var text = new StringBuilder();
        foreach (var row in page.Rows.Prepend(page.Columns)) text.AppendJoin(',', row.Select(Quoted)).Append("\r\n");
        return text.ToString();
    }

    private static string Quoted(string cell) =>
        cell.AsSpan().IndexOfAny(",\"\r\n") < 0 ? cell : $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
