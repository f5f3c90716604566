namespace SolarEconomics;

/// <summary>One step between the light on the plane and AC.</summary>
/// <param name="Name">What takes the energy.</param>
/// <param name="Kwh">Energy lost, in kWh; below 0 where it is a gain, as cold cells are.</param>
/// <param name="Share">The same as a share of the nominal energy.</param>
public sealed record GenerationLoss(string Name, double Kwh, double Share);
