using NodaTime;

namespace SolarEconomics;

/// <summary>The versions of a home's tariff, each in force from its day until the next one's.</summary>
/// <remarks>Immutable, so safe to share between threads.</remarks>
public sealed partial class TariffHistory
{
    private TariffHistory(IReadOnlyList<Tariff> versions) => Versions = versions;

    /// <summary>The versions, earliest first; at least one, all in one currency.</summary>
    public IReadOnlyList<Tariff> Versions { get; }

    /// <summary>The version that starts last.</summary>
    public Tariff Latest => Versions[^1];

    /// <summary>Currency of all versions.</summary>
    public Currency Currency => Versions[0].Currency;

    /// <summary>What the file says that cannot be priced here, or only where a condition is met, by its path; empty where everything is priced.</summary>
    public IReadOnlyList<string> Unpriced { get; private init; } = [];

    /// <summary>The clock of the place that the file names, where it fixes no clock of its rates: a plan for "local" time and the postcodes of one state.
    /// <see langword="null"/> where it names none.</summary>
    public DateTimeZone? PlaceZone { get; private init; }

    /// <summary>The clock of the home as far as the file tells it: of the place, else of the rates, which may follow another.</summary>
    internal DateTimeZone? HomeZone => PlaceZone ?? Latest.Zone;

    /// <summary>A history from versions.</summary>
    /// <param name="versions">At least one version, in any order, no two from the same day.</param>
    /// <exception cref="TariffException">No version, two from one day, mixed currencies, an hour without or with two rates, an unknown season.</exception>
    public static TariffHistory Of(params IReadOnlyList<Tariff> versions)
    {
        ArgumentNullException.ThrowIfNull(versions);
        if (versions.Count == 0) throw Throw.NoTariff();
        var mistakes = versions.SelectMany(TariffCheck.Mistakes).Select(m => m.ToString()).ToList();
        var ordered = versions.OrderBy(v => v.From).ToList();
        for (var i = 1; i < ordered.Count; i++)
        {
            if (ordered[i].From == ordered[i - 1].From) mistakes.Add(Throw.TwoVersionsFromOneDay(ordered[i - 1], ordered[i]));
            if (ordered[i].Currency != ordered[0].Currency) mistakes.Add(Throw.TwoCurrencies(ordered[0], ordered[i]));
        }
        return mistakes.Count == 0 ? new TariffHistory(ordered) : throw new TariffException(mistakes);
    }

    /// <summary>The version in force on a billing day.</summary>
    /// <param name="day">A billing day, not before the first version's.</param>
    /// <exception cref="TariffException">The day lies before the first version.</exception>
    public Tariff At(LocalDate day)
    {
        for (var i = Versions.Count - 1; i >= 0; i--)
            if (Versions[i].From <= day) return Versions[i];
        throw Throw.NoTariffYet(day, Versions[0]);
    }

    internal TariffHistory From(IReadOnlyList<string> unpriced, DateTimeZone? place) => new(Versions) { Unpriced = unpriced, PlaceZone = place };

    /// <summary>The same without what is priced because its condition is met.</summary>
    internal IReadOnlyList<string> UnpricedBeside(IReadOnlyList<string> conditionsMet) =>
        [.. Unpriced.Except(Versions.SelectMany(v => v.Parts).Where(p => p.Condition is { } c && conditionsMet.Contains(c, StringComparer.OrdinalIgnoreCase)).Select(p => p.PlanPath).OfType<string>(), StringComparer.Ordinal)];

    /// <summary>The days on which each version is in force, cut to a span, in order.</summary>
    /// <param name="days">The span wanted, not before the first version.</param>
    /// <exception cref="TariffException">The span starts before the first version.</exception>
    internal IEnumerable<(Tariff Version, DateSpan Days)> During(DateSpan days)
    {
        if (days.Days > 0 && days.Start < Versions[0].From) throw Throw.NoTariffYet(days.Start, Versions[0]);
        for (var i = 0; i < Versions.Count; i++)
        {
            var end = i + 1 < Versions.Count ? Versions[i + 1].From : LocalDate.MaxIsoValue;
            var shared = new DateSpan(Versions[i].From, end).Overlap(days);
            if (shared.Days > 0) yield return (Versions[i], shared);
        }
    }

    /// <summary>Prints the versions with their days.</summary>
    public override string ToString() => string.Join("; ", Versions);
}
