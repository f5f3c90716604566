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
                Said(finding);
                Beneath(finding, foldAll: false);
                break;
            case ChartAnswer chart: Chart(chart); break;
            case PictureAnswer picture: page.Append(CultureInfo.InvariantCulture, $"<figure><img src=\"{Tags.Text(picture.Address)}\" alt=\"{Tags.Text(picture.Words)}\"></figure>\n"); break;
            case LongAnswer tooLong: page.Element("p", FormattableString.Invariant($"This {tooLong.What} of {tooLong.Characters / 1_000_000} MB is too long for a report; it is kept in the notebook's file.")); break;
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

    /// <summary>The figure large, the words after it.</summary>
    private void Said(FindingAnswer finding) =>
        page.Append("<p class=\"finding\">").Append(finding.Figure.Length > 0 ? $"<b>{Tags.Text(finding.Figure)}</b> " : "").Append(Tags.Text(finding.Words)).Append("</p>\n");

    private void Chart(ChartAnswer chart)
    {
        charts++;
        var isSaidAbove = chart.Finding is { Figure.Length: > 0 };
        if (isSaidAbove) Said(chart.Finding!);
        page.Append(CultureInfo.InvariantCulture, $"<figure class=\"chart\"><div role=\"img\" aria-label=\"{Tags.Text(chart.Alt)}\"></div>\n<script type=\"application/json\">");
        // Angle brackets are written as escapes, so that nothing in a figure can end the element.
        page.Append(chart.Figure.ToJsonString().Replace("<", "\\u003c", StringComparison.Ordinal).Replace(">", "\\u003e", StringComparison.Ordinal)).Append("</script>\n");
        if (!isSaidAbove) page.Element("figcaption", chart.Finding is { Words.Length: > 0 } said ? said.Words : chart.Alt);
        page.Append("</figure>\n");
        if (chart.Finding is { } finding) Beneath(finding, foldAll: true);
    }

    /// <summary>The first table stands open where it is small, as on the page; cautions always stand open.</summary>
    private void Beneath(FindingAnswer finding, bool foldAll)
    {
        for (var at = 0; at < finding.Tables.Count; at++)
        {
            var table = finding.Tables[at];
            if (foldAll || at > 0 || table.Columns.Count > 6 || table.Rows.Count > 10)
                page.Append("<details><summary>").Append(Tags.Text(table.Caption.Length > 0 ? table.Caption : "Table")).Append("</summary>").Table(table with { Caption = "" }).Append("</details>\n");
            else page.Table(table);
        }
        if (finding.Notes.Count > 0)
        {
            page.Append("<details><summary>What this rests on</summary><ul class=\"notes\">\n");
            foreach (var note in finding.Notes) page.Element("li", note);
            page.Append("</ul></details>\n");
        }
        if (finding.Cautions.Count > 0) page.Append("<p class=\"caution\"><b>Take care: </b>").Append(Tags.Text(string.Join(' ', finding.Cautions))).Append("</p>\n");
    }
}
