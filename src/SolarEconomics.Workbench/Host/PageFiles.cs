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

    private readonly Dictionary<string, string> files;
    private readonly Lazy<ChartFrame> chart;
    private readonly string modules;

    public PageFiles(string folder)
    {
        files = Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .Where(path => Kinds.ContainsKey(Path.GetExtension(path)))
            .ToDictionary(path => "/" + Path.GetRelativePath(folder, path).Replace('\\', '/'), StringComparer.Ordinal);
        // Named ahead, they all come at once instead of each when another one asks for it.
        modules = string.Concat(files.Keys.Where(path => path.StartsWith("/js/", StringComparison.Ordinal) || path == "/vendor/editor.js").Order(StringComparer.Ordinal)
            .Select(path => $"<link rel=\"modulepreload\" href=\"{path[1..]}\">\n"));
        chart = new Lazy<ChartFrame>(() => new ChartFrame(folder));
    }

    public Task Answer(HttpContext context, string path)
    {
        var nonce = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16));
        var headers = context.Response.Headers;
        headers.CacheControl = "no-cache";
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers.ContentSecurityPolicy = PagePolicy.ForPage(nonce);
        switch (path)
        {
            case "/": return Html(context, File.ReadAllText(files["/index.html"]).Replace("{{nonce}}", nonce, StringComparison.Ordinal).Replace("{{modules}}", modules, StringComparison.Ordinal));
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

    private static Task Html(HttpContext context, string text)
    {
        context.Response.ContentType = Kinds[".html"];
        return context.Response.WriteAsync(text);
    }
}
