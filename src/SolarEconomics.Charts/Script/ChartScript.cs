namespace SolarEconomics.Charts;

/// <summary>The small script that puts a figure on a page: draws it, exchanges its colours for light or dark, makes a picture of it.</summary>
/// <remarks>It defines <c>solarChart</c> with <c>draw(element, figure, look)</c>, <c>recolour(figure, look)</c> and
/// <c>picture(figure, look, format, width, height, fontRule)</c>; <c>look</c> is <c>light</c> or <c>dark</c>, <c>fontRule</c> is <see cref="ReadingFont.FontFaceRule"/>. It needs <see cref="PlotlyScript"/> and asks nothing of a network.</remarks>
public static class ChartScript
{
    /// <summary>The script as text: a classic script, so that it can stand inside a page as well as in a file.</summary>
    public static string Read() => Carried.Text("SolarEconomics.Charts.Script.chart.js");
}
