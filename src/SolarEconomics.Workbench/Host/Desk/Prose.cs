using Markdig;
using Markdig.Syntax;

namespace SolarEconomics.Workbench;

/// <summary>Text steps: Markdown to HTML, with tables and formulas; HTML inside the Markdown is shown as the text it is.</summary>
internal static class Prose
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().DisableHtml().UsePipeTables().UseMathematics().UseFootnotes().Build();

    /// <summary>The words alone.</summary>
    public static string Plain(string markdown) => Markdown.ToPlainText(markdown, Pipeline).Trim();

    /// <summary>The HTML without the first heading, which the page shows as the question.</summary>
    public static string WithoutHeading(string markdown)
    {
        var document = Markdown.Parse(markdown, Pipeline);
        if (document.OfType<HeadingBlock>().FirstOrDefault() is { } heading) document.Remove(heading);
        return document.ToHtml(Pipeline);
    }
}
