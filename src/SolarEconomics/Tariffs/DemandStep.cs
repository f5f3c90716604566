namespace SolarEconomics;

/// <summary>One block of a demand charge.</summary>
/// <param name="UpTo">Where the block ends, counted from 0, in kW or kVA; <see langword="null"/> for all that is left.</param>
/// <param name="Price">Price before tax for one kW or kVA.</param>
public sealed record DemandStep(decimal? UpTo, decimal Price);
