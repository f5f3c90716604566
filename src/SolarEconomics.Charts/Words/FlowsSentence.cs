using System.Globalization;

namespace SolarEconomics.Charts;

/// <summary>The stack of flows in a sentence: how much, and which share of it went or came where.</summary>
internal static class FlowsSentence
{
    /// <summary>The words of the picture; notes and cautions are those of the run.</summary>
    internal static Finding Say(FlowsView view, EnergyFlows flows, CultureInfo culture)
    {
        var total = view.Parts.Sum(p => p.Kwh.Sum());
        var span = $"from {PeopleNumber.Date(flows.Time.LocalStartOf(0).Date, culture)} to {PeopleNumber.Date(flows.Time.LocalStartOf(flows.Time.Count - 1).Date, culture)}";
        var what = view.Side is FlowSide.Generation ? $"could have been made {span}" : $"were wanted {span}";
        var words = total > 0
            ? $"{what}: {MonthsSentence.List([.. view.Parts.Select(p => $"{PeopleNumber.Percent(p.Kwh.Sum() / total, culture)} {p.Name}")])}."
            : $"{what}.";
        var run = flows.Say(culture);
        return new Finding(PeopleNumber.Kwh(total, culture), words) { Notes = run.Notes, Cautions = run.Cautions };
    }
}
