namespace SolarEconomics;

/// <summary>What one input of a device took of what the arrays on it could have given.</summary>
/// <param name="Input">Input, counted from 1.</param>
/// <param name="Arrays">Names of the arrays on it.</param>
/// <param name="OfferedKwh">What they could have given, each at its own best point. Unit: kWh.</param>
/// <param name="TakenKwh">What the input took. Unit: kWh. Less where its voltage window, its current, its power or a common voltage of unlike strings holds back.</param>
/// <param name="KnowsVoltage">Whether the operating voltage of every array on it is known; if not, window, current and common voltage are not reckoned.</param>
public sealed record InputOutput(int Input, IReadOnlyList<string> Arrays, double OfferedKwh, double TakenKwh, bool KnowsVoltage)
{
    /// <summary>What the input held back. Unit: kWh.</summary>
    public double HeldBackKwh => OfferedKwh - TakenKwh;
}
