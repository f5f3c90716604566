namespace SolarEconomics.Notebook;

/// <summary>Gives a warm process the notebook that it will work for.</summary>
/// <param name="Folder">Folder from which relative paths start.</param>
/// <param name="Culture">Name of the culture in which results are written.</param>
internal sealed record OpenSession(string Folder, string Culture) : SessionCommand;
