namespace SolarEconomics.Workbench;

/// <summary>What <c>compare</c> was asked, as typed.</summary>
/// <param name="Tariffs">Folder of tariff files and energy plans.</param>
/// <param name="Span">Which readings are billed.</param>
/// <param name="Today">Name of the tariff that the home has, or null.</param>
/// <param name="Json">Whether to print for another program.</param>
internal sealed record CompareOptions(string Tariffs, BillSpanOptions Span, string? Today, bool Json);
