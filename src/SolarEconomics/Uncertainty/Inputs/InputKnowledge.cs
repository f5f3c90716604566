namespace SolarEconomics;

/// <summary>What it would be worth to know one input for sure.</summary>
/// <param name="Input">Name of the input.</param>
/// <param name="ShareOfVariance">Share of the result's variance that goes away. Range: 0 to 1; the shares of inputs that work together need not sum to 1.</param>
/// <param name="SpreadLeft">Standard deviation that is left in the mean. Unit: the site's currency.</param>
/// <param name="WorthForDecision">What knowing it before a decision is worth, in the mean; <see langword="null"/> where no decision is asked. Unit: the site's currency.</param>
/// <remarks>Equation: Var(E[Y|X]) / Var(Y), and E[max(E[D|X], 0)] − max(E[D], 0), by parting the draws into groups of like X. Source: stat-10.</remarks>
public sealed record InputKnowledge(string Input, double ShareOfVariance, double SpreadLeft, double? WorthForDecision = null);
