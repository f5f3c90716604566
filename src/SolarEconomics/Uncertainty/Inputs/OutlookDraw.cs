namespace SolarEconomics;

/// <summary>What one draw of an outlook gives.</summary>
/// <param name="Npv">Net present value at the first purchase.</param>
/// <param name="PaybackYears">Lasting payback in years from the first purchase; infinite where it is not within the horizon.</param>
/// <param name="PositionAtHorizon">Cash position at the horizon, undiscounted.</param>
internal readonly record struct OutlookDraw(double Npv, double PaybackYears, double PositionAtHorizon);
