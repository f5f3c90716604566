using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>What all open notebooks have in common.</summary>
/// <param name="OpenSession">Opens a session; it is there at once and warms up by itself.</param>
/// <param name="Time">The clock.</param>
/// <param name="State">The folder of this installation.</param>
internal sealed record Shared(Func<SessionOptions, ISession> OpenSession, TimeProvider Time, StateFolder State)
{
    /// <summary>Which code may run.</summary>
    public LetRun LetRun { get; } = new(State, Time);

    /// <summary>The step that was copied last, in whichever notebook; null before the first.</summary>
    public CopiedStep? Copied { get; set; }
}
