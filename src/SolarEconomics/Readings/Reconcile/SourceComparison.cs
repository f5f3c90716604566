using System.Globalization;

namespace SolarEconomics;

/// <summary>Two sources of the same energy side by side, never averaged, with the most likely reasons why they differ.</summary>
/// <param name="First">Name of the first source.</param>
/// <param name="Second">Name of the second source.</param>
/// <param name="FirstKwh">Energy of the first where both were read. Unit: kWh.</param>
/// <param name="SecondKwh">Energy of the second where both were read. Unit: kWh.</param>
/// <param name="CommonHours">Time in which both were read. Unit: hours.</param>
/// <param name="Reasons">Likely reasons of a difference, the most likely first; empty where they agree or nothing explains it.</param>
public sealed record SourceComparison(string First, string Second, double FirstKwh, double SecondKwh, double CommonHours, IReadOnlyList<Disagreement> Reasons) : IFinding
{
    /// <summary>Energy of the first less energy of the second. Unit: kWh.</summary>
    public double DifferenceKwh => FirstKwh - SecondKwh;

    /// <inheritdoc />
    public Finding Say(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        var words = $"\"{First}\" has {FirstKwh.ToString("#,0.0", culture)} kWh and \"{Second}\" has {SecondKwh.ToString("#,0.0", culture)} kWh over {CommonHours.ToString("#,0", culture)} hours in which both were read. "
            + (Reasons.Count == 0 ? "Nothing points to a fault." : "Most likely: " + string.Join("; ", Reasons.Select(r => r.Words)) + ".");
        return new Finding(DifferenceKwh.ToString("#,0.0", culture) + " kWh apart", words);
    }
}
