namespace SolarEconomics;

/// <summary>Where one source's energy at the board went in an interval. Unit: kWh.</summary>
internal readonly record struct BoardShare(double ToStandbyKwh, double ToUseKwh, double ToChargeKwh, double LeftKwh);
