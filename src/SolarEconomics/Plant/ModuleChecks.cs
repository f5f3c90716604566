using System.Globalization;
using System.Runtime.CompilerServices;

namespace SolarEconomics;

/// <summary>What a data sheet cannot say.</summary>
internal static class ModuleChecks
{
    internal static double? Voltage(double? value, [CallerMemberName] string name = "") =>
        value is null ? null : Require.Within(value.Value, 0.1, 2000, "V", name);

    internal static double? Current(double? value, [CallerMemberName] string name = "") =>
        value is null ? null : Require.Within(value.Value, 0.01, 100, "A", name);

    internal static double? Falling(double? value, [CallerMemberName] string name = "") =>
        value is null ? null : Require.Within(value.Value, -0.01, 0,
            "fraction per K; −0.30 %/°C is written −0.0030, and voltage and power fall with heat, so the sign is minus", name);

    internal static double? Rising(double? value, [CallerMemberName] string name = "") =>
        value is null ? null : Require.Within(value.Value, 0, 0.003,
            "fraction per K; 0.05 %/°C is written 0.0005, and current rises with heat, so the sign is plus", name);

    internal static IReadOnlyList<string> Contradictions(ModuleType m)
    {
        var found = new List<string>();
        if (m is { VmpV: { } vmp, VocV: { } voc } && vmp >= voc)
            found.Add(Say($"{m.Name}: found Vmp {vmp} V at or above Voc {voc} V, expected it 15 to 25 % below. Are the two swapped?"));
        if (m is { ImpA: { } imp, IscA: { } isc } && imp >= isc)
            found.Add(Say($"{m.Name}: found Imp {imp} A at or above Isc {isc} A, expected it 4 to 8 % below. Are the two swapped?"));
        if (m is { VmpV: { } v, ImpA: { } a } && Math.Abs((v * a / m.RatedW) - 1) > 0.03)
            found.Add(Say($"{m.Name}: found Vmp × Imp = {v * a:0.#} W beside a rating of {m.RatedW} W, expected them within 3 %. Is one of them from another type or from NOCT?"));
        if (m.AreaM2 is { } area && m.RatedW / area is < 30 or > 260)
            found.Add(Say($"{m.Name}: found {m.RatedW} W on {m.AreaM2} m², expected 30 to 260 W per m²."));
        return found;
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
