using NodaTime;

namespace SolarEconomics.Charts;

/// <summary>The flows of each month or year as parts of a stack; a part that never occurs is left out.</summary>
internal sealed class FlowsView
{
    internal FlowsView(EnergyFlows flows, FlowSide side, bool byYear)
    {
        (Side, ByYear) = (side, byYear);
        var sums = byYear ? flows.ByYear() : flows.ByMonth();
        // A run may begin inside a month: its bar stands for the month.
        Starts = [.. sums.Select(s => new LocalDate(s.From.Year, byYear ? 1 : s.From.Month, 1))];
        Parts = [.. (side is FlowSide.Generation ? s_generation : s_use).Select(p => new FlowsPart(p.Name, p.Mark, [.. sums.Select(p.Kwh)])).Where(p => p.Kwh.Any(kwh => kwh > 0))];
    }

    private static readonly (string Name, Func<ChartTheme, BarMark> Mark, Func<FlowTotals, double> Kwh)[] s_generation =
    [
        ("used directly", t => BarMark.Of(Destination.UsedDirectly, t), m => m[FlowPath.ArrayToUse]),
        ("into the battery", t => BarMark.Of(Destination.UsedFromStorage, t), m => m[FlowPath.ArrayToBattery]),
        ("exported", t => BarMark.Of(Destination.Exported, t), m => m[FlowPath.ArrayToExport]),
        ("curtailed", t => BarMark.Of(Destination.Lost, t), m => m[FlowPath.ArrayCurtailed]),
        // What is left: what the plant itself took, and the converter's loss behind arrays on the battery's bus.
        ("standby and converter", t => new BarMark(t.Lost, "/", IsOutlined: true),
            m => Math.Max(0, m.PotentialKwh - m[FlowPath.ArrayToUse] - m[FlowPath.ArrayToBattery] - m[FlowPath.ArrayToExport] - m[FlowPath.ArrayCurtailed])),
    ];

    private static readonly (string Name, Func<ChartTheme, BarMark> Mark, Func<FlowTotals, double> Kwh)[] s_use =
    [
        ("from the arrays", t => BarMark.Of(Destination.UsedDirectly, t), m => m[FlowPath.ArrayToUse]),
        ("out of the battery", t => BarMark.Of(Destination.UsedFromStorage, t), m => m[FlowPath.BatteryToUse]),
        ("from the generator", t => new BarMark(t.Ink, "+", IsOutlined: true), m => m[FlowPath.GeneratorToUse]),
        ("from the grid", t => new BarMark(t.Ink, "/", IsOutlined: true), m => m[FlowPath.GridToUse]),
        ("not served", t => BarMark.Of(Destination.Lost, t), m => m.UnservedKwh),
    ];

    internal FlowSide Side { get; }

    internal bool ByYear { get; }

    internal IReadOnlyList<LocalDate> Starts { get; }

    internal IReadOnlyList<FlowsPart> Parts { get; }

    /// <summary>The end of the last bar, excluded.</summary>
    internal LocalDate End => ByYear ? Starts[^1].PlusYears(1) : Starts[^1].PlusMonths(1);

    /// <summary>Length of a bar by plotly's names.</summary>
    internal string Period => ByYear ? "M12" : "M1";
}
