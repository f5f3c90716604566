namespace SolarEconomics.Workbench;

/// <summary>What the browser allows the page and its frames, in the words of the Content-Security-Policy header.</summary>
internal static class PagePolicy
{
    /// <summary>The page: only our own files, no inline script, frames only from here and nobody may frame it.</summary>
    /// <remarks>The nonce is for the editor, which writes its own style sheet.</remarks>
    public static string ForPage(string nonce) => string.Join("; ",
        "default-src 'none'", "script-src 'self'", $"style-src 'self' 'nonce-{nonce}'", "font-src 'self'", "img-src 'self' data:",
        "connect-src 'self'", "frame-src 'self'", "base-uri 'none'", "form-action 'none'", "frame-ancestors 'none'");

    /// <summary>A frame with results in it: an origin of its own, our one script, nothing from the network and no way to it.</summary>
    public static string ForFrame(string nonce) => string.Join("; ",
        "sandbox allow-scripts", "default-src 'none'", $"script-src 'nonce-{nonce}'", "style-src 'unsafe-inline'", "font-src data:", "img-src data: blob:",
        "base-uri 'none'", "form-action 'none'", "frame-ancestors 'self'");
}
