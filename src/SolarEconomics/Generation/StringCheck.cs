using System.Globalization;

namespace SolarEconomics;

/// <summary>Whether an array stays within the limits of the device behind it, at the coldest dawn and on the hottest day.</summary>
/// <remarks>Missing data never passes: its limit says that it cannot be told. Immutable, so safe to share between threads.</remarks>
public sealed partial class StringCheck : IFinding
{
    private StringCheck(ModuleArray array, string device, IReadOnlyList<StringLimit> limits, int? mostInSeries, int? fewestInSeries)
    {
        Array = array;
        Device = device;
        Limits = limits;
        MostInSeries = mostInSeries;
        FewestInSeries = fewestInSeries;
    }

    /// <summary>The array checked.</summary>
    public ModuleArray Array { get; }

    /// <summary>Name of the device behind it.</summary>
    public string Device { get; }

    /// <summary>Each limit with its verdict.</summary>
    public IReadOnlyList<StringLimit> Limits { get; }

    /// <summary>Most modules in series that every known voltage limit allows; <see langword="null"/> where it cannot be told.</summary>
    public int? MostInSeries { get; }

    /// <summary>Fewest modules in series that reach the voltage needed on the hottest day; <see langword="null"/> where it cannot be told.</summary>
    public int? FewestInSeries { get; }

    /// <summary>Whether each string needs a fuse for the modules' sake, and of what rating.</summary>
    public FuseNeed Fuse { get; private init; } = new(null, null, null);

    /// <summary>The worst of all verdicts: one failure fails all, and one unknown leaves all unknown.</summary>
    public Verdict Verdict =>
        Limits.Any(l => l.Verdict == Verdict.Fails) ? Verdict.Fails
        : Limits.Any(l => l.Verdict == Verdict.CannotTell) ? Verdict.CannotTell
        : Limits.Any(l => l.Verdict == Verdict.LeavesPowerUnused) ? Verdict.LeavesPowerUnused
        : Verdict.WithinTheData;

    /// <summary>What must be said with every string check.</summary>
    public static IReadOnlyList<string> Cautions { get; } =
    [
        "Planning aid, not a design. DC at these voltages can kill, and its arcs do not stop by themselves and start fires.",
        "Follow the local wiring code and the makers' data; design and connection belong to a licensed electrician.",
        "The lowest temperature must be the one that the local code or a record of many years names, not a mean.",
        "Mixed connector makes, aged back-sheets and reused modules need tests before they are wired. Roofs: falls, fragile sheets, wind, weight, fire access.",
    ];

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        var figure = Verdict switch
        {
            Verdict.Fails => "breaks a limit",
            Verdict.CannotTell => "cannot tell",
            Verdict.LeavesPowerUnused => "leaves power unused",
            _ => "within the data given",
        };
        var worst = Limits.Where(l => l.Verdict == Verdict).Select(l => l.What + ": " + l.Why);
        var words = string.Create(culture, $"{Array.InSeries} in series × {Array.Strings} of {Array.Module.Name} on {Device}. ")
            + (Verdict == Verdict.WithinTheData ? "Every limit holds within the data given." : string.Join(" ", worst));
        var range = (FewestInSeries, MostInSeries) switch
        {
            ({ } few, { } most) when few <= most => string.Create(culture, $"By voltage {few} to {most} modules in series fit."),
            ({ } few, { } most) => string.Create(culture, $"By voltage nothing fits: at least {few} are needed and at most {most} allowed."),
            (_, { } most) => string.Create(culture, $"By voltage at most {most} modules in series fit."),
            _ => "How many modules in series fit cannot be told from these data.",
        };
        return new Finding(figure, words)
        {
            Notes = [range, .. Array.Module.Contradictions()],
            Cautions = Cautions,
            Tables = [new FindingTable("Limits", ["What", "Found", "Limit", "Unit", "Margin", "Verdict", "How"], [.. Limits.Select(l => Row(l, culture))])],
        };
    }

    private static IReadOnlyList<string> Row(StringLimit limit, CultureInfo culture) =>
    [
        limit.What,
        limit.Found?.ToString("#,0.0#", culture) ?? "unknown",
        limit.Limit?.ToString("#,0.0#", culture) ?? "unknown",
        limit.Unit,
        limit.Margin is { } margin ? Wording.Percent(margin, culture) : "unknown",
        limit.Verdict switch { Verdict.Fails => "fails", Verdict.CannotTell => "cannot tell", Verdict.LeavesPowerUnused => "power unused", _ => "within the data given" },
        limit.Why,
    ];
}
