namespace SolarEconomics.Workbench;

/// <summary>How a step's answer stands. The page writes the name in lower case and has a word and a shape for each.</summary>
internal enum StepState
{
    /// <summary>Not yet worked out, and no answer kept.</summary>
    None,

    /// <summary>An answer from before this session.</summary>
    Kept,

    /// <summary>Asked for, after others.</summary>
    Waiting,

    /// <summary>At work.</summary>
    Working,

    /// <summary>Worked out in this session; its answer stands.</summary>
    Done,

    /// <summary>Something that it uses has changed.</summary>
    Old,

    /// <summary>Something has changed, and whether it is used cannot be known.</summary>
    Perhaps,

    /// <summary>It failed; its answer is the message.</summary>
    Failed,

    /// <summary>Stopped before its end.</summary>
    Stopped,
}
