using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>A stretch of generation of a device without its clock, put where the sun says it belongs.</summary>
/// <param name="Channel">The channel with the stretch moved; its values are marked doubtful.</param>
/// <param name="ShiftedBy">How far the stretch was moved.</param>
/// <param name="Intervals">How many intervals were moved.</param>
/// <param name="Kwh">Their energy. Unit: kWh.</param>
/// <param name="SpreadMinutes">Half the width within which two thirds of its days, each by itself, would place it. Unit: minutes.</param>
public sealed record ClockRealignment(Channel Channel, Duration ShiftedBy, int Intervals, double Kwh, double SpreadMinutes) : IFinding
{
    /// <inheritdoc />
    public Finding Say(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        return new Finding(Kwh.ToString("#,0.0", culture) + " kWh realigned",
            $"{Intervals.ToString("#,0", culture)} intervals of \"{Channel.Name}\" without a clock were moved by {ShiftedBy.TotalDays.ToString("#,0.000", culture)} days: their energy then lies around solar noon, within about {SpreadMinutes.ToString("0", culture)} minutes.")
        {
            Notes = ["The first day of the stretch is taken from you: no record says it. Moved values are marked doubtful."],
        };
    }
}
