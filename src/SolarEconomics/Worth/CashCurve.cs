using System.Globalization;

namespace SolarEconomics;

/// <summary>The cash position from the first purchase to the horizon, with the straight line beside it.</summary>
/// <param name="Points">The honest position, earliest first, at least one point a year.</param>
/// <param name="StraightLine">The straight-line position on the same dates.</param>
/// <param name="Payback">When it is paid back.</param>
/// <param name="StraightLinePaybackYears">Years by the straight line; <see langword="null"/> where it never gets there.</param>
/// <param name="Finding">The curve in words.</param>
public sealed record CashCurve(
    IReadOnlyList<CashPoint> Points,
    IReadOnlyList<CashPoint> StraightLine,
    Payback Payback,
    double? StraightLinePaybackYears,
    Finding Finding) : IFinding
{
    /// <inheritdoc/>
    public Finding Say(CultureInfo culture) => Finding;
}
