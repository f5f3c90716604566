namespace SolarEconomics.Workbench;

/// <summary>Where another state of a notebook comes from.</summary>
internal enum OfferKind
{
    /// <summary>A journal that was left behind: changes that were not saved when the program ended.</summary>
    LeftBehind,

    /// <summary>The file, as another program wrote it.</summary>
    OnDisk,

    /// <summary>An earlier version.</summary>
    Version,
}
