using System.Text.Json.Nodes;
using System.Text.Json.Serialization;

namespace SolarEconomics.Workbench;

/// <summary>One thing that a step answered, in the kind that the page draws.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(FindingAnswer), "finding")]
[JsonDerivedType(typeof(ChartAnswer), "chart")]
[JsonDerivedType(typeof(HtmlAnswer), "html")]
[JsonDerivedType(typeof(LongAnswer), "long")]
[JsonDerivedType(typeof(PictureAnswer), "picture")]
[JsonDerivedType(typeof(TextAnswer), "text")]
[JsonDerivedType(typeof(ProblemAnswer), "problem")]
internal abstract record Answer;

/// <summary>A finding: its figure large, then its words.</summary>
internal sealed record FindingAnswer(
    string Figure, string Words, IReadOnlyList<string> Cautions, IReadOnlyList<string> Notes, IReadOnlyList<FindingTable> Tables) : Answer
{
    /// <summary>Name of the whole table in the session, of which the answer shows the first rows; null where it shows all there is.</summary>
    public string? Table { get; init; }
}

/// <summary>A chart as data, with what it says and the numbers behind it.</summary>
internal sealed record ChartAnswer(JsonNode Figure, string Name, string Alt, FindingAnswer? Finding) : Answer;

/// <summary>HTML that is not ours; it is shown in a frame that reaches nothing.</summary>
internal sealed record HtmlAnswer(string Html) : Answer;

/// <summary>An output too long to be shown; it is in the notebook's file.</summary>
internal sealed record LongAnswer(string What, long Characters) : Answer;

/// <summary>A picture as a data address.</summary>
internal sealed record PictureAnswer(string Address, string Words) : Answer;

/// <summary>Plain text: printed, or a value's own words.</summary>
internal sealed record TextAnswer(string Text, bool IsComplaint = false) : Answer;

/// <summary>What went wrong: the message, then where, with the kind of error.</summary>
internal sealed record ProblemAnswer(string What, string Detail, string Code) : Answer;
