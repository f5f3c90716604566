using System.Globalization;
using Deedle;
using Plotly.NET;
using SolarEconomics.Charts;

namespace SolarEconomics.Notebook;

/// <summary>Turns a step's value into what is shown: findings and frames as HTML, charts as data, all of them also as plain text.</summary>
internal static class ResultFormatter
{
    internal static ShownValue Format(object? value, CultureInfo culture)
    {
        try
        {
            return value switch
            {
                SolarChart chart => ChartData.Of(chart),
                GenericChart drawing => ChartData.Of(SolarChart.Of(drawing, "Chart", "Drawn in this step, without words of its own.")),
                IFinding finding => Of(finding.Say(culture)),
                Finding finding => Of(finding),
                FindingTable table => Of(new Finding("", "") { Tables = [table] }),
                IFrame frame => Of(FrameTable.Of(frame, culture)),
                _ => ShownValue.Plain(PlainText.Of(value, culture)),
            };
        }
        catch (Exception e) when (e is not OperationCanceledException)
        {
            // The value's own code failed while it was asked to show itself; the step itself worked.
            return ShownValue.Plain($"The result is a {value?.GetType().Name}, which could not be shown: {e.Message}");
        }
    }

    private static ShownValue Of(Finding finding) => ShownValue.Html(FindingHtml.Of(finding), FindingWords.Of(finding));
}
