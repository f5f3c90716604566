using System.Globalization;

namespace SolarEconomics;

/// <summary>Strings that differ, in parallel on one input: what they give at their common voltage, and what one may push into another.</summary>
/// <remarks>At 1,000 W/m² and 25 °C in even light. Missing data never passes. Immutable, so safe to share between threads. Source: gen-12.</remarks>
public sealed class MixedStrings : IFinding
{
    private const int Rounds = 200;

    private MixedStrings(IReadOnlyList<ModuleString> strings, IReadOnlyList<StringLimit> limits) => (Strings, Limits) = (strings, limits);

    /// <summary>The strings.</summary>
    public IReadOnlyList<ModuleString> Strings { get; }

    /// <summary>Sum of the ratings. Unit: W.</summary>
    public double RatedW => Strings.Sum(s => s.RatedW);

    /// <summary>Voltage at which the strings together give most; <see langword="null"/> where it cannot be told. Unit: V.</summary>
    public double? CommonV { get; private init; }

    /// <summary>Power at that voltage; <see langword="null"/> where it cannot be told. Unit: W.</summary>
    public double? PowerW { get; private init; }

    /// <summary>Share of the ratings that the mixture loses; <see langword="null"/> where it cannot be told.</summary>
    public double? LossShare => PowerW is { } power ? 1 - (power / RatedW) : null;

    /// <summary>Most current that flows backwards into a string with no load on; <see langword="null"/> where it cannot be told. Unit: A.</summary>
    public double? ReverseA { get; private init; }

    /// <summary>The reverse current against what the modules bear, in daily work and into a failed string.</summary>
    public IReadOnlyList<StringLimit> Limits { get; }

    /// <summary>The worst of all verdicts.</summary>
    public Verdict Verdict =>
        Limits.Any(l => l.Verdict == Verdict.Fails) ? Verdict.Fails
        : PowerW is null || Limits.Any(l => l.Verdict == Verdict.CannotTell) ? Verdict.CannotTell
        : LossShare > 0.03 ? Verdict.LeavesPowerUnused
        : Verdict.WithinTheData;

    /// <summary>Checks strings in parallel on one input.</summary>
    /// <param name="strings">One string or more.</param>
    /// <exception cref="ArgumentException">There is no string.</exception>
    public static MixedStrings Of(params IReadOnlyList<ModuleString> strings)
    {
        ArgumentNullException.ThrowIfNull(strings);
        if (strings.Count == 0 || strings.Any(s => s.Modules.Count == 0)) throw new ArgumentException("Found no string, or one without modules, expected at least one module in each.", nameof(strings));
        if (!strings.All(s => s.HasCurve)) return new MixedStrings(strings, [Reverse(strings, null), Failed(strings)]);
        var common = BestVoltage(v => strings.Sum(s => v * s.CurrentA(v)), 0, strings.Max(s => s.VocV!.Value));
        var open = OpenVoltage(strings);
        var reverse = Math.Max(0, -strings.Min(s => s.CurrentA(open)));
        return new MixedStrings(strings, [Reverse(strings, reverse), Failed(strings)])
        {
            CommonV = common,
            PowerW = common * strings.Sum(s => s.CurrentA(common)),
            ReverseA = reverse,
        };
    }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        var figure = Verdict switch
        {
            Verdict.Fails => "breaks a limit",
            Verdict.CannotTell => "cannot tell",
            _ => $"{Wording.Percent(LossShare!.Value, culture)} lost",
        };
        var words = PowerW is { } power
            ? string.Create(culture, $"{Strings.Count} strings of {RatedW:#,0} W together give {power:#,0} W at their common {CommonV:0.0} V in full sun at 25 °C.")
            : "Voc, Vmp, Isc and Imp of every module are needed to tell what these strings give together.";
        return new Finding(figure, words)
        {
            Tables =
            [
                new FindingTable("Strings", ["Modules", "Vmp, V", "Voc, V", "Imp, A", "Alone, W"], [.. Strings.Select(s => (IReadOnlyList<string>)
                [
                    string.Join(" + ", s.Modules.GroupBy(m => m.Name, StringComparer.Ordinal).Select(g => string.Create(culture, $"{g.Count()} × {g.Key}"))),
                    Or(s.VmpV, "0.0", culture), Or(s.VocV, "0.0", culture), Or(s.ImpA, "0.00", culture), Or(s.PowerW, "#,0", culture),
                ])]),
                new FindingTable("Limits", ["What", "Found, A", "Limit, A", "Why"], [.. Limits.Select(l => (IReadOnlyList<string>)[l.What, Or(l.Found, "0.00", culture), Or(l.Limit, "0.0", culture), l.Why])]),
            ],
            Notes = ["In series the lowest current rules (bypass diodes are not reckoned: an estimate on the low side); in parallel all strings stand at one voltage."],
            Cautions = StringCheck.Cautions,
        };
    }

    private static string Or(double? value, string format, CultureInfo culture) => value?.ToString(format, culture) ?? "unknown";

    private static StringLimit Reverse(IReadOnlyList<ModuleString> strings, double? reverseA)
    {
        const string What = "Current pushed backwards into the weakest string with no load on";
        var most = strings.All(s => s.LargestFuseA is not null) ? strings.Min(s => s.LargestFuseA) : null;
        return (reverseA, most) switch
        {
            ({ } found, { } limit) => new(What, found, limit, "A", found <= limit ? Verdict.WithinTheData : Verdict.Fails, "strings of unlike voltage push into one another"),
            ( < 1e-6, null) => new(What, 0, null, "A", Verdict.WithinTheData, "strings of like voltage push nothing"),
            _ => new(What, reverseA, most, "A", Verdict.CannotTell, "a point of a module's curve, or its largest fuse, is unknown"),
        };
    }

    /// <summary>A shorted string takes what all others give in bright light.</summary>
    private static StringLimit Failed(IReadOnlyList<ModuleString> strings)
    {
        const string What = "Current that the other strings feed into a failed one";
        if (strings.Count == 1) return new(What, 0, strings[0].LargestFuseA, "A", Verdict.WithinTheData, "one string: no other feeds it");
        if (strings.Any(s => s.IscA is null || s.LargestFuseA is null)) return new(What, null, null, "A", Verdict.CannotTell, "short-circuit current or the largest fuse of a module is unknown");
        var worst = strings.Select(s => (Fed: SolarEconomics.Strings.BrightLight * (strings.Sum(o => o.IscA!.Value) - s.IscA!.Value), Bears: s.LargestFuseA!.Value)).MaxBy(x => x.Fed - x.Bears);
        return new(What, worst.Fed, worst.Bears, "A", worst.Fed <= worst.Bears ? Verdict.WithinTheData : Verdict.CannotTell,
            worst.Fed <= worst.Bears ? "no string fuse is needed for the modules' sake" : "a fuse in each string is needed; whether one is fitted is not known here");
    }

    private static double BestVoltage(Func<double, double> powerAt, double low, double high)
    {
        // Two unlike strings can make two peaks: look everywhere first, then closely.
        var best = Enumerable.Range(0, Rounds + 1).Select(i => low + ((high - low) * i / Rounds)).MaxBy(powerAt);
        var (from, to) = (Math.Max(low, best - ((high - low) / Rounds)), Math.Min(high, best + ((high - low) / Rounds)));
        for (var round = 0; round < Rounds; round++)
        {
            var (a, b) = (from + ((to - from) / 3), to - ((to - from) / 3));
            if (powerAt(a) < powerAt(b)) from = a;
            else to = b;
        }
        return (from + to) / 2;
    }

    /// <summary>The voltage at which no current leaves: what the strong give, the weak take.</summary>
    private static double OpenVoltage(IReadOnlyList<ModuleString> strings)
    {
        var (low, high) = (0.0, strings.Max(s => s.VocV!.Value) * 1.05);
        for (var round = 0; round < Rounds; round++)
        {
            var middle = (low + high) / 2;
            if (strings.Sum(s => s.CurrentA(middle)) > 0) low = middle;
            else high = middle;
        }
        return (low + high) / 2;
    }
}
