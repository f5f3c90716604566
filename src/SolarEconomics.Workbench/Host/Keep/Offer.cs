using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>Another state of the open notebook: the reader can look at both, and decides which one to go on with. The other one is kept too.</summary>
/// <param name="Kind">Where it comes from.</param>
/// <param name="State">The other state.</param>
/// <param name="Words">What happened, in words.</param>
/// <param name="Left">The journal that it was read from, if it was.</param>
internal sealed record Offer(OfferKind Kind, NotebookState State, string Words, LeftJournal? Left = null)
{
    /// <summary>Whether the pages show the other state now.</summary>
    public bool IsShown { get; init; }

    public OfferView View() => Kind switch
    {
        OfferKind.LeftBehind => new(Words, IsShown, "Look at it with the last changes", "Look at it as it was saved", "Go on with the last changes", "Go on as it was saved"),
        OfferKind.OnDisk => new(Words, IsShown, "Look at the file's", "Look at this page's", "Go on with the file's", "Go on with this page's"),
        _ => new(Words, IsShown, "Look at this version", "Look at it as it is now", "Bring this version back", "Go on as it is now"),
    };
}
