namespace SolarEconomics;

/// <summary>Every rate of return of a flow, and how the search ended.</summary>
/// <param name="Roots">All rates above -100 % a year at which the value is 0, lowest first; a rate that only touches 0 stands once.</param>
/// <param name="End">How the search ended.</param>
/// <param name="Iterations">Steps taken, all roots together.</param>
/// <param name="Residual">Largest absolute value left at a root, in the unit of the amounts; 0 where there is no root.</param>
/// <param name="SignChanges">How often the sign changes along the flow: never fewer than there are rates.</param>
public sealed record IrrResult(IReadOnlyList<Rate> Roots, SolveEnd End, int Iterations, double Residual, int SignChanges);
