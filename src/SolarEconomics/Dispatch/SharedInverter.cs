namespace SolarEconomics;

/// <summary>One inverter behind which several arrays work: they share its power limit and its efficiency by load.</summary>
/// <param name="Name">Its name; arrays that name the same inverter share it.</param>
/// <param name="Type">What its data sheet says. Used are rated power, highest input power and efficiency; its power at night is stated in <see cref="EnergySystem.OtherStandbyW"/>.</param>
/// <remarks>What it clips, loses and gives in an interval falls on its arrays in proportion to what each brings in front of it. Worked out from the mean power of
/// each interval: in long ones clipping is a lower bound.</remarks>
public sealed record SharedInverter(string Name, InverterType Type);
