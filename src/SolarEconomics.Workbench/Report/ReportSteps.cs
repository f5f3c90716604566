using System.Globalization;
using System.Text;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>The steps of a report, one after another: text, then each answer, with its working beneath.</summary>
internal sealed class ReportSteps(StringBuilder page)
{
    private int charts;

    public bool HasCharts => charts > 0;

    public void Write(NotebookStep step)
    {
        if (step.Kind == StepKind.Text) Text(step);
        else if (step.Kind == StepKind.Code) Code(step);
    }

    private void Text(NotebookStep step)
    {
        page.Append("<section class=\"prose\">\n");
        // The first heading of all is the page's own; see ReportPage.
        if (step.Heading is { } heading && !step.Source.TrimStart().StartsWith("# ", StringComparison.Ordinal)) page.Element("h2", heading);
        page.Append(Prose.WithoutHeading(step.Source)).Append("</section>\n");
    }

    private void Code(NotebookStep step)
    {
        page.Append("<section class=\"step\">\n");
        foreach (var answer in Answers.Of(step.Outputs)) Write(answer);
        page.Append("<details><summary>Working</summary><pre><code>").Append(Tags.Text(step.Source)).Append("</code></pre></details>\n</section>\n");
    }

    private void Write(Answer answer)
    {
        switch (answer)
        {
            case FindingAnswer finding:
                page.Append("<p class=\"finding\">").Append(finding.Figure.Length > 0 ? $"<b>{Tags.Text(finding.Figure)}</b> " : "").Append(Tags.Text(finding.Words)).Append("</p>\n");
                Beneath(finding, isFolded: false);
                break;
            case ChartAnswer chart: Chart(chart); break;
            case PictureAnswer picture: page.Append(CultureInfo.InvariantCulture, $"<figure><img src=\"{Tags.Text(picture.Address)}\" alt=\"{Tags.Text(picture.Words)}\"></figure>\n"); break;
            case TextAnswer text: page.Element("pre", text.Text); break;
            case ProblemAnswer problem:
                page.Append("<div class=\"problem\">\n").Element("p", problem.What, "what").Element("p", problem.Detail).Element("p", problem.Code).Append("</div>\n");
                break;
            case HtmlAnswer html:
                // No right at all: no script, no network, no way to the page around it.
                page.Append("<iframe sandbox=\"\" title=\"Output of this step\" srcdoc=\"").Append(Tags.Text(html.Html)).Append("\"></iframe>\n");
                break;
        }
    }

    private void Chart(ChartAnswer chart)
    {
        charts++;
        page.Append(CultureInfo.InvariantCulture, $"<figure class=\"chart\"><div role=\"img\" aria-label=\"{Tags.Text(chart.Alt)}\"></div>\n<script type=\"application/json\">");
        // Angle brackets are written as escapes, so that nothing in a figure can end the element.
        page.Append(chart.Figure.ToJsonString().Replace("<", "\\u003c", StringComparison.Ordinal).Replace(">", "\\u003e", StringComparison.Ordinal)).Append("</script>\n<figcaption>");
        page.Append(Tags.Text(chart.Finding is { } finding ? $"{finding.Figure} {finding.Words}".Trim() : chart.Alt)).Append("</figcaption></figure>\n");
        if (chart.Finding is { } said) Beneath(said, isFolded: true);
    }

    private void Beneath(FindingAnswer finding, bool isFolded)
    {
        foreach (var caution in finding.Cautions) page.Element("p", caution, "caution");
        foreach (var table in finding.Tables)
        {
            if (isFolded) page.Append("<details><summary>The numbers behind it</summary>").Table(table).Append("</details>\n");
            else page.Table(table);
        }
        if (finding.Notes.Count == 0) return;
        page.Append("<ul class=\"notes\">\n");
        foreach (var note in finding.Notes) page.Element("li", note);
        page.Append("</ul>\n");
    }
}
