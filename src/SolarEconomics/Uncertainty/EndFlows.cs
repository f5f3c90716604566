using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>A full set of flows that records allow and that is worth as little or as much as they allow: what must have happened for the value to lie at that end.</summary>
/// <remarks>All at the board (AC). Balance of each interval: generation + import + discharge = use + export + charge. Immutable, so safe to share between threads.</remarks>
public sealed class EndFlows : IFinding
{
    private readonly EnergySet _flows;
    private readonly DateTimeZone _zone;

    internal EndFlows(EvidenceRung rung, EnergySet flows, Money value, double missedKwh, DateTimeZone zone)
    {
        (Rung, Value, MissedKwh) = (rung, value, missedKwh);
        (_flows, _zone) = (flows, zone);
        var use = new double[flows.Grid.Count];
        for (var i = 0; i < use.Length; i++) use[i] = flows.WantedKwh(i) + flows.StandbyKwh[i];
        UseKwh = use;
    }

    /// <summary>The rung whose records the flows were laid in. An end of a lower rung can be reached by flows of a higher one, as more records are among fewer.</summary>
    public EvidenceRung Rung { get; }

    /// <summary>The bill without the plant less the bill with it, of these flows, with all rounding.</summary>
    public Money Value { get; }

    /// <summary>By how much sums on record had to be missed, because records contradict each other. Unit: kWh. 0 where they agree.</summary>
    public double MissedKwh { get; }

    /// <summary>Start of the first interval.</summary>
    public Instant Start => _flows.Grid.Start;

    /// <summary>Length of an interval.</summary>
    public Duration Interval => _flows.Grid.Step;

    /// <summary>Made by the plant in each interval. Unit: kWh.</summary>
    public IReadOnlyList<double> GenerationKwh => _flows.GenerationKwh;

    /// <summary>From the grid in each interval. Unit: kWh.</summary>
    public IReadOnlyList<double> ImportKwh => _flows.ImportKwh;

    /// <summary>To the grid in each interval. Unit: kWh.</summary>
    public IReadOnlyList<double> ExportKwh => _flows.ExportKwh;

    /// <summary>Into the battery in each interval. Unit: kWh.</summary>
    public IReadOnlyList<double> ChargeKwh => _flows.ChargeKwh;

    /// <summary>Out of the battery in each interval. Unit: kWh.</summary>
    public IReadOnlyList<double> DischargeKwh => _flows.DischargeKwh;

    /// <summary>Used on site in each interval, the plant's own standby included. Unit: kWh.</summary>
    public IReadOnlyList<double> UseKwh { get; }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture) => new(Wording.Whole(Value, culture),
        $"is what the plant was worth if {Wording.Kwh(GenerationKwh.Sum(), culture)} were made and {Wording.Kwh(ExportKwh.Sum(), culture)} of them exported at the hours of these flows."
        + (MissedKwh > 0.5 ? $" The records contradict each other, so these flows miss their totals by {Wording.Kwh(MissedKwh, culture)}." : ""))
    {
        Notes = ["One of many sets of flows that the records allow; nothing says that it happened.", "A battery's flows keep to its totals and its power; its state of charge is no record."],
        Cautions = [Cautions.Records],
        Tables = [ByMonth(culture)],
    };

    private FindingTable ByMonth(CultureInfo culture)
    {
        var months = Enumerable.Range(0, _flows.Grid.Count).GroupBy(i => _flows.Grid.StartOf(i).InZone(_zone).Date.ToYearMonth());
        return new FindingTable("Flows by month (kWh)", ["Month", "Made", "Import", "Export", "Charge", "Discharge", "Use"],
        [
            .. months.Select(month => (IReadOnlyList<string>)
            [
                month.Key.ToString("MMM uuuu", culture),
                .. new[] { GenerationKwh, ImportKwh, ExportKwh, ChargeKwh, DischargeKwh, UseKwh }.Select(kwh => Wording.Minus(month.Sum(i => kwh[i]).ToString("#,0", culture))),
            ]),
        ]);
    }
}
