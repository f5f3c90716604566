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

    /// <summary>The events in which something failed or was in the way: all but clipping and curtailment.</summary>
    public IReadOnlyList<LostEnergy> Failures => [.. Events.Where(e => e.Shortfall.Kind is not (ShortfallKind.Clipping or ShortfallKind.Curtailment))];

    /// <summary>Energy lost in all failures. Unit: kWh.</summary>
    public double LostKwh => Failures.Sum(e => e.Shortfall.LostKwh);

    /// <summary>Worth of the energy lost in all failures; <see langword="null"/> where one cannot be told.</summary>
    public Money? LostValue => Failures is { Count: > 0 } lost && lost.All(e => e.Value is not null) ? lost.Select(e => e.Value!.Value).Aggregate((a, b) => a + b) : null;

    /// <summary>About what the inverter clipped at its limit, no shortfall. Unit: kWh. A lower bound: an interval's mean hides short peaks.</summary>
    public double ClippedKwh => Events.Where(e => e.Shortfall.Kind == ShortfallKind.Clipping).Sum(e => e.Shortfall.LostKwh);

    /// <summary>Hours in which the inverter stood at its limit.</summary>
    public double HoursAtLimit { get; private init; }

    /// <summary>Hours at the limit of which no reference tells what was clipped.</summary>
    public double UntoldHoursAtLimit { get; private init; }

    /// <summary>About what a full battery, an export limit or a trip held back, no shortfall. Unit: kWh. 0 where <see cref="TellsCurtailment"/> is false.</summary>
    public double CurtailedKwh => Events.Where(e => e.Shortfall.Kind == ShortfallKind.Curtailment).Sum(e => e.Shortfall.LostKwh);

    /// <summary>Whether curtailment can be told: only weather knows of it, as sister arrays are held back alike.</summary>
    public bool TellsCurtailment { get; private init; }

    /// <summary>Days of the record on which something was held back.</summary>
    public int HeldBackDays { get; private init; }

    /// <summary>Yields and performance ratio of the intervals that were read and not held back; <see langword="null"/> without weather. Clipped energy is not in them.</summary>
    /// <remarks>Source: gen-7. Without a sensor in the plane the ratio carries the weather's error.</remarks>
    public Yields? Yields { get; private init; }

    /// <summary>Power of warm or cold cells over that of cells at 25 °C in the weather given; 1 without weather.</summary>
    public double HeatFactor { get; private init; } = 1;

    /// <summary>Performance ratio as it would be at 25 °C cell; <see langword="null"/> without weather. Equation: PR / <see cref="HeatFactor"/>. Source: gen-7.</summary>
    public double? PerformanceRatioAt25C => Yields?.PerformanceRatio / HeatFactor;

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture) => ExpectedWords.Say(this, culture);
}
