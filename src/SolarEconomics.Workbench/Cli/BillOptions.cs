namespace SolarEconomics.Workbench;

/// <summary>What <c>bill</c> was asked, as typed.</summary>
/// <param name="Tariff">Tariff file of ours or a regulator's energy plan.</param>
/// <param name="Span">Which readings are billed.</param>
/// <param name="Json">Whether to print for another program.</param>
internal sealed record BillOptions(string Tariff, BillSpanOptions Span, bool Json);
