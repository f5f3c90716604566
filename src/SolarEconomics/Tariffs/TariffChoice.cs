namespace SolarEconomics;

/// <summary>A tariff that a home could have, under a name to list it by.</summary>
/// <param name="Name">Name in the list; each name once.</param>
/// <param name="Tariffs">Its history; comparisons take the latest version for all time.</param>
public sealed record TariffChoice(string Name, TariffHistory Tariffs)
{
    /// <summary>Reads every tariff file and energy plan (<c>*.json</c>) of a folder, in order of their file names.</summary>
    /// <param name="folder">Path of the folder; folders inside it are left alone.</param>
    /// <exception cref="RecordException">The folder is missing, holds no such file, or a file in it cannot be read.</exception>
    /// <exception cref="TariffException">A file contradicts itself.</exception>
    public static IReadOnlyList<TariffChoice> LoadAll(string folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        if (!Directory.Exists(folder)) throw Throw.NoTariffFolder(folder);
        var files = Directory.GetFiles(folder, "*.json").Order(StringComparer.Ordinal).ToList();
        if (files.Count == 0) throw Throw.EmptyTariffFolder(folder);
        return [.. files.Select(file => new TariffChoice(Path.GetFileNameWithoutExtension(file), TariffHistory.Load(file)))];
    }
}
