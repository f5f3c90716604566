namespace SolarEconomics.Charts;

/// <summary>One part of the stack: its name, its look, its energy by bar.</summary>
internal sealed record FlowsPart(string Name, Func<ChartTheme, BarMark> Mark, IReadOnlyList<double> Kwh);
