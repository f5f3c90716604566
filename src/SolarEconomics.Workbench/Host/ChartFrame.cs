namespace SolarEconomics.Workbench;

/// <summary>The document of the frame that draws charts, whole in one file: a frame with an origin of its own sends no cookie and can fetch nothing.</summary>
internal sealed class ChartFrame
{
    private readonly string html;

    public ChartFrame(string folder)
    {
        string Read(params string[] path) => File.ReadAllText(Path.Combine([folder, .. path]));
        html = Read("frames", "chart.html")
            .Replace("{{font}}", FontAsText(folder), StringComparison.Ordinal)
            .Replace("{{draw}}", Read("frames", "chart.js"), StringComparison.Ordinal)
            .Replace("{{plotly}}", Read("vendor", "plotly.min.js"), StringComparison.Ordinal);
    }

    public string Html(string nonce) => html.Replace("{{nonce}}", nonce, StringComparison.Ordinal);

    internal static string FontAsText(string folder) => "data:font/woff2;base64," + Convert.ToBase64String(
        File.ReadAllBytes(Path.Combine(folder, "fonts", "atkinson-hyperlegible-next-latin-wght-normal.woff2")));
}
