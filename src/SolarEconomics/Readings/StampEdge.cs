namespace SolarEconomics;

/// <summary>Which edge of its interval a stamp names.</summary>
public enum StampEdge
{
    /// <summary>As a header says ("end", "until"); otherwise the start.</summary>
    FromRecord,

    /// <summary>The stamp names the start of its interval.</summary>
    Start,

    /// <summary>The stamp names the end of its interval.</summary>
    End,
}
