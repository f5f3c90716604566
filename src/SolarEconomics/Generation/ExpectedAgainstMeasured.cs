using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>What a place of the plant made beside what it should have made, and the events in which it fell short.</summary>
/// <remarks>Sister arrays are each other's reference: what a full battery or an export limit holds back, it holds back alike in all. Immutable, so safe to share between threads.</remarks>
public sealed partial class ExpectedAgainstMeasured : IFinding
{
    private ExpectedAgainstMeasured(Site site, string device, IReadOnlyList<DayOfOutput> days, IReadOnlyList<LostEnergy> events) =>
        (Site, Device, Days, Events) = (site, device, days, events);

    /// <summary>The site.</summary>
    public Site Site { get; }

    /// <summary>Name of the device at work there last.</summary>
    public string Device { get; }

    /// <summary>Each day of the record: expected and measured.</summary>
    public IReadOnlyList<DayOfOutput> Days { get; }

    /// <summary>What fell short, in time order.</summary>
    public IReadOnlyList<LostEnergy> Events { get; }

    /// <summary>What the expectation stands on: the references and on how many days each was fitted.</summary>
    public IReadOnlyList<string> References { get; private init; } = [];

    /// <summary>Scatter of a usual day around its expectation, of the best reference. Unit: kWh/kWp.</summary>
    public double ScatterKwhPerKwp { get; private init; }

    /// <summary>Days that could not be told: readings missing here, or in every reference.</summary>
    public int DaysUntold => Days.Count(d => d.Ratio is null);

    /// <summary>Energy lost in all events. Unit: kWh.</summary>
    public double LostKwh => Events.Sum(e => e.Shortfall.LostKwh);

    /// <summary>Worth of the energy lost in all events; <see langword="null"/> where one cannot be told.</summary>
    public Money? LostValue => Events.Count > 0 && Events.All(e => e.Value is not null) ? Events.Select(e => e.Value!.Value).Aggregate((a, b) => a + b) : null;

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture) => ExpectedWords.Say(this, culture);
}
