namespace SolarEconomics.Workbench;

/// <summary>Another state of the notebook, as the page offers it: words, and a label for each thing that can be done.</summary>
internal sealed record OfferView(string Words, bool IsShown, string ShowOther, string ShowOwn, string Take, string Leave);
