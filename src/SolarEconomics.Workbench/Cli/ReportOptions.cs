namespace SolarEconomics.Workbench;

/// <summary>What <c>report</c> was asked.</summary>
/// <param name="Notebook">The file as typed.</param>
/// <param name="To">The page to write, as typed.</param>
internal sealed record ReportOptions(string Notebook, string To);
