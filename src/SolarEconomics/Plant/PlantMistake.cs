namespace SolarEconomics;

/// <summary>One thing by which a plant contradicts itself, with the device and the field that it stands in.</summary>
/// <param name="Device">Index of the device.</param>
/// <param name="Place">JSON pointer below the device, such as <c>/toAcLow</c>.</param>
/// <param name="Found">What was found, in words.</param>
/// <param name="Expected">What was expected, and what to do, in words.</param>
internal sealed record PlantMistake(int Device, string Place, string Found, string Expected);
