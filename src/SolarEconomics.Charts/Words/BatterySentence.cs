using System.Globalization;

namespace SolarEconomics.Charts;

/// <summary>Some days of a battery in two sentences.</summary>
internal static class BatterySentence
{
    /// <summary>The words of the picture; notes and cautions are those of the run.</summary>
    internal static Finding Say(BatteryView view, EnergyFlows flows, CultureInfo culture)
    {
        var (low, high) = (view.Days.Min(d => d.LowKwh), view.Days.Max(d => d.HighKwh));
        var days = view.Days.Count == 1 ? $"on {PeopleNumber.Date(view.Days[0].Date, culture)}"
            : $"from {PeopleNumber.Date(view.Days[0].Date, culture)} to {PeopleNumber.Date(view.Days[^1].Date, culture)}";
        var words = $"came out of the battery {days}, and {PeopleNumber.Kwh(view.Days.Sum(d => d.InKwh), culture)} went in. "
            + $"It was between {PeopleNumber.Percent(low / view.UsableKwh, culture)} and {PeopleNumber.Percent(high / view.UsableKwh, culture)} full, of {PeopleNumber.Number(view.UsableKwh, 1, culture)} kWh usable.";
        var run = flows.Say(culture);
        return new Finding(PeopleNumber.Kwh(view.Days.Sum(d => d.OutKwh), culture), words) { Notes = run.Notes, Cautions = run.Cautions };
    }
}
