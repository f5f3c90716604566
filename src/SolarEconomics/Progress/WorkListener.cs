namespace SolarEconomics;

/// <summary>What somebody who waits around long work wants of it.</summary>
/// <param name="Progress">Hears 0 when a piece of work begins, shares between, and 1 when it ends; <see langword="null"/> for nobody.</param>
public sealed record WorkListener(IProgress<double>? Progress)
{
    /// <summary>Hears a first answer of work that takes longer than a reader waits, in its own words a preview; the full answer is the work's result. Default: <see langword="null"/>, nobody.</summary>
    /// <remarks>Called on a thread of the work, which goes on when the call returns.</remarks>
    public Action<IFinding>? Preview { get; init; }

    /// <summary>Ends the work where its code looks, beside the token that its caller gave. Default: never.</summary>
    public CancellationToken Stop { get; init; }
}
