using System.Globalization;

namespace SolarEconomics;

internal static partial class Throw
{
    internal static RecordException RecordsContradict(FlowWindow window, FlowContradiction c) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found records that cannot all be true: {Said(window, c.Too, low: true)} against {Said(window, c.Against, low: false)}, {c.ByKwh:0.###} kWh apart; ") +
            "expected what comes in to equal what goes out. Widen a record by its meter's accuracy, or leave the doubtful one out.");

    internal static ArgumentOutOfRangeException RangeOfWindow(string name, EnergyRange range, string expected) =>
        new(name, range, string.Create(CultureInfo.InvariantCulture, $"Found {range.LowKwh} to {range.HighKwh} kWh, expected {expected}."));

    private static string Said(FlowWindow window, IReadOnlyList<string> names, bool low)
    {
        var said = names.Select(name => (Name: name, Kwh: low ? EndOf(window, name).LowKwh : EndOf(window, name).HighKwh)).Where(r => !low || r.Kwh != 0)
            .Select(r => string.Create(CultureInfo.InvariantCulture, $"{r.Name} of at {(low ? "least" : "most")} {r.Kwh:0.###} kWh")).ToList();
        return said.Count == 0 ? "nothing" : string.Join(" and ", said);
    }

    private static EnergyRange EndOf(FlowWindow window, string name) => name switch
    {
        "generation" => window.Generation,
        "import" => window.Import,
        "export" => window.Export,
        "net import" => window.NetImport,
        "charge" => window.Charge,
        "discharge" => window.Discharge,
        "use" => window.Use,
        _ => window.HeldByBattery,
    };
}
