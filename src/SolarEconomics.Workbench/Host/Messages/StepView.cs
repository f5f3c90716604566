namespace SolarEconomics.Workbench;

/// <summary>A step as the page shows it.</summary>
/// <param name="Kind"><c>code</c> or <c>text</c>.</param>
/// <param name="Heading">Its Markdown heading or first comment; empty where there is none.</param>
/// <param name="Text">Its working or Markdown.</param>
/// <param name="Html">The Markdown as HTML, without its heading; empty for code.</param>
/// <param name="State">A name of <see cref="StepState"/>, as the page writes it.</param>
/// <param name="Seconds">How long the last working took in this session.</param>
internal sealed record StepView(
    string Id, string Kind, string Heading, string Text, string Html, string State, int Lines, double? Seconds, IReadOnlyList<Answer> Answers);
