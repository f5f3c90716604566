namespace SolarEconomics.Files;

/// <summary>One sheet of a workbook.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Path">Its part in the archive.</param>
/// <param name="Hidden">Whether the workbook does not show it.</param>
internal sealed record WorkbookSheet(string Name, string Path, bool Hidden);
