using System.Text;

namespace SolarEconomics.Charts;

/// <summary>The small script that puts a figure on a page: draws it, exchanges its colours for light or dark, makes a picture of it.</summary>
/// <remarks>It defines <c>solarChart</c> with <c>draw(element, figure, look)</c>, <c>recolour(figure, look)</c> and
/// <c>picture(figure, look, format, width, height)</c>; <c>look</c> is <c>light</c> or <c>dark</c>. It needs <see cref="PlotlyScript"/> and asks nothing of a network.</remarks>
public static class ChartScript
{
    /// <summary>The script as text.</summary>
    public static string Read()
    {
        const string resource = "SolarEconomics.Charts.Script.chart.js";
        using var stream = typeof(ChartScript).Assembly.GetManifestResourceStream(resource)!;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
