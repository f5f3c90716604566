using System.Text;
using System.Security.Cryptography;
using Microsoft.AspNetCore.Http;

namespace SolarEconomics.Workbench;

/// <summary>The page's own files, read from beside the program; only names that were there at the start are served.</summary>
internal sealed class PageFiles
{
    private static readonly Dictionary<string, string> Kinds = new(StringComparer.Ordinal)
    {
        [".html"] = "text/html; charset=utf-8",
        [".css"] = "text/css; charset=utf-8",
        [".js"] = "text/javascript; charset=utf-8",
        [".svg"] = "image/svg+xml",
        [".woff2"] = "font/woff2",
        [".md"] = "text/plain; charset=utf-8",
        [".txt"] = "text/plain; charset=utf-8",
    };

    private static readonly string[] Sheets = ["fonts.css", "colours.css", "page.css", "step.css", "answer.css"];

    private readonly Dictionary<string, string> files;
    private readonly Lazy<ChartFrame> chart;
    private readonly Lazy<string> script;
    private readonly Lazy<string> style;

    public PageFiles(string folder)
    {
        files = Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .Where(path => Kinds.ContainsKey(Path.GetExtension(path)))
            .ToDictionary(path => "/" + Path.GetRelativePath(folder, path).Replace('\\', '/'), StringComparer.Ordinal);
        script = new Lazy<string>(() => JoinedModules.Of("main.js", name => File.ReadAllText(Path.Combine(folder, "js", name))));
        style = new Lazy<string>(() => string.Concat(Sheets.Select(name => File.ReadAllText(Path.Combine(folder, "css", name)))));
        chart = new Lazy<ChartFrame>(() => new ChartFrame(folder));
    }

    /// <summary>Answers with a file; the page itself comes with the first look at its notebook.</summary>
    public Task Answer(HttpContext context, string path, string firstLook = "")
    {
        var nonce = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16));
        var headers = context.Response.Headers;
        headers.CacheControl = "no-cache";
        headers.XContentTypeOptions = "nosniff";
        headers["X-DNS-Prefetch-Control"] = "off";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers.ContentSecurityPolicy = PagePolicy.ForPage(nonce);
        switch (path)
        {
            case "/":
                headers.CacheControl = "no-store";
                // Inside a page only "<" could end the message; in JSON it stands in texts alone.
                return Html(context, File.ReadAllText(files["/index.html"]).Replace("{{nonce}}", nonce, StringComparison.Ordinal)
                    .Replace("{{mark}}", FirstLook.MarkOf(Encoding.UTF8.GetBytes(firstLook)), StringComparison.Ordinal).Replace("{{opened}}", firstLook.Replace("<", "\\u003C", StringComparison.Ordinal), StringComparison.Ordinal));
            case "/js/page-whole.js": return Text(context, ".js", script.Value);
            case "/css/page-whole.css": return Text(context, ".css", style.Value);
            case "/frames/chart.html":
                headers.ContentSecurityPolicy = PagePolicy.ForFrame(nonce);
                return Html(context, chart.Value.Html(nonce));
            case "/frames/foreign.html":
                headers.ContentSecurityPolicy = PagePolicy.ForFrame(nonce);
                return Html(context, File.ReadAllText(files[path]).Replace("{{nonce}}", nonce, StringComparison.Ordinal));
        }
        if (files.TryGetValue(path, out var file))
        {
            context.Response.ContentType = Kinds[Path.GetExtension(file)];
            return context.Response.SendFileAsync(file, context.RequestAborted);
        }
        context.Response.StatusCode = StatusCodes.Status404NotFound;
        context.Response.ContentType = Kinds[".txt"];
        return context.Response.WriteAsync("Nothing is served under this name.");
    }

    private static Task Html(HttpContext context, string text) => Text(context, ".html", text);

    private static Task Text(HttpContext context, string kind, string text)
    {
        context.Response.ContentType = Kinds[kind];
        return context.Response.WriteAsync(text);
    }
}
