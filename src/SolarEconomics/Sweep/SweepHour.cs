namespace SolarEconomics;

/// <summary>What all cases of a sweep share in one interval, side by side in memory.</summary>
/// <param name="SunKwh">Generation at the board.</param>
/// <param name="UseKwh">Wanted use.</param>
/// <param name="SpreadPerKwh">Price of import less what export is paid.</param>
/// <param name="ExportPerKwh">Paid for export.</param>
internal readonly record struct SweepHour(double SunKwh, double UseKwh, double SpreadPerKwh, double ExportPerKwh);
