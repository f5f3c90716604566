using SolarEconomics.Charts;

namespace SolarEconomics.Workbench;

/// <summary>The document of the frame that draws charts, whole in one file: a frame with an origin of its own sends no cookie and can fetch nothing.</summary>
internal sealed class ChartFrame
{
    private readonly string html;

    public ChartFrame(string folder)
    {
        string Read(string name) => File.ReadAllText(Path.Combine(folder, "frames", name));
        html = Read("chart.html")
            .Replace("{{font}}", ReadingFont.FontFaceRule(), StringComparison.Ordinal)
            .Replace("{{messages}}", Read("chart.js"), StringComparison.Ordinal)
            .Replace("{{draw}}", ChartScript.Read(), StringComparison.Ordinal)
            .Replace("{{plotly}}", PlotlyScript.Read(), StringComparison.Ordinal);
    }

    public string Html(string nonce) => html.Replace("{{nonce}}", nonce, StringComparison.Ordinal);
}
