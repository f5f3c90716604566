namespace SolarEconomics.Notebook;

/// <summary>What a step of a notebook is.</summary>
public enum StepKind
{
    /// <summary>C# that is worked out.</summary>
    Code,

    /// <summary>Words in Markdown.</summary>
    Text,

    /// <summary>A kind of another program; kept as it is and never run.</summary>
    Other,
}
