using System.Globalization;

namespace SolarEconomics;

/// <summary>The difference that a change makes: the outlook with it less the outlook without, from the day of the change on.</summary>
/// <param name="Swap">The change.</param>
/// <param name="OldKwp">Rating of the modules that go. Unit: kWp.</param>
/// <param name="ExtraKwhPerYear">Energy gained in the first year, what displaced modules yield elsewhere included. Unit: kWh.</param>
/// <param name="ExtraUsedShare">Share of it that is used on site, from the records' own hours; the rest is exported.</param>
/// <param name="FirstYearValue">Worth of the first year's extra energy.</param>
/// <param name="FirstYearRange">The same with all of it exported, and with all of it used.</param>
/// <param name="Npv">Net present value at the day of the change, at the outlook's discount rate.</param>
/// <param name="NpvRange">The same with all exported, and with all used.</param>
/// <param name="PaybackYears">Lasting payback of the difference in years from the change; <see langword="null"/> where it is not within the horizon.</param>
/// <param name="Irr">Rate of return of the difference, with how the search ended.</param>
/// <param name="Finding">The change in words.</param>
/// <remarks>Only what differs counts: money already spent is left out. Nominal, project view.</remarks>
public sealed record UpgradeResult(
    PanelSwap Swap,
    double OldKwp,
    double ExtraKwhPerYear,
    double ExtraUsedShare,
    Money FirstYearValue,
    MoneyRange FirstYearRange,
    Money Npv,
    MoneyRange NpvRange,
    double? PaybackYears,
    IrrResult Irr,
    Finding Finding) : IFinding
{
    /// <inheritdoc/>
    public Finding Say(CultureInfo culture) => Finding;
}
