namespace SolarEconomics.Workbench;

/// <summary>A step as the page shows it.</summary>
/// <param name="Kind"><c>code</c> or <c>text</c>.</param>
/// <param name="Heading">Its Markdown heading or first comment; empty where there is none.</param>
/// <param name="Text">Its working or Markdown.</param>
/// <param name="Html">The Markdown as HTML, without its heading; empty for code.</param>
/// <param name="State">A name of <see cref="StepState"/>, as the page writes it.</param>
/// <param name="Asks">What it waits for; null when it waits for nothing.</param>
/// <param name="Hidden">What its answer rests on that reading from the top would not tell; empty when there is nothing.</param>
/// <param name="Seconds">How long the last working took in this session.</param>
/// <param name="Preview">A first answer while it works, marked as a preview; empty where there is none.</param>
internal sealed record StepView(
    string Id, string Kind, string Heading, string Text, string Html, string State, int Lines, double? Seconds, IReadOnlyList<Answer> Answers, AskView? Asks, string Hidden, IReadOnlyList<Answer> Preview);

/// <summary>A line of text that a step waits for.</summary>
/// <param name="Input">What the answer names.</param>
/// <param name="Prompt">What is asked; empty where the step printed its question.</param>
/// <param name="IsSecret">Whether the text is not shown while it is typed.</param>
internal sealed record AskView(string Input, string Prompt, bool IsSecret);
