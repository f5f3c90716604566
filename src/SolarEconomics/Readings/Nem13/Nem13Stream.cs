using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>One register of a NEM13 file with its periods, in any order until it becomes a channel.</summary>
internal sealed class Nem13Stream(string[] fields)
{
    private readonly List<Nem13Period> _periods = [];
    private readonly string _direction = fields[Nem13Fields.Direction];

    internal string Nmi { get; } = fields[Nem13Fields.Nmi];

    internal string Register { get; } = fields[Nem13Fields.Register];

    internal string Suffix { get; } = fields[Nem13Fields.Suffix];

    internal string UnitText { get; } = fields[Nem13Fields.Unit];

    internal EnergyUnit? Unit { get; } = EnergyUnit.Find(fields[Nem13Fields.Unit]);

    internal bool IsEnergy => Unit is { IsActiveEnergy: true, IsPower: false };

    /// <summary>The direction as the grid sees it: E leaves it for the home. Where it is left out, the letter of the suffix says it.</summary>
    internal FlowKind Flow => !IsEnergy ? FlowKind.Unknown : _direction.ToUpperInvariant() switch
    {
        "E" => FlowKind.Import,
        "I" => FlowKind.Export,
        "" => Nem12Stream.FlowOf(Suffix, Unit),
        _ => FlowKind.Unknown,
    };

    internal bool Holds(string[] other) =>
        Same(Nmi, other[Nem13Fields.Nmi]) && Same(Register, other[Nem13Fields.Register]) && Same(Suffix, other[Nem13Fields.Suffix])
        && string.Equals(UnitText, other[Nem13Fields.Unit], StringComparison.OrdinalIgnoreCase) && string.Equals(_direction, other[Nem13Fields.Direction], StringComparison.OrdinalIgnoreCase);

    internal double ToKwh(double quantity) => IsEnergy ? Unit!.Scale(quantity) : quantity;

    internal void Add(Nem13Period period) => _periods.Add(period);

    internal Channel ToChannel(string name, string file, ProblemList problems)
    {
        var kept = new List<Nem13Period>();
        var extra = 0;
        foreach (var period in _periods.OrderBy(p => p.StartTicks).ThenBy(p => p.EndTicks).ThenBy(p => p.Line))
        {
            if (kept.Count == 0 || period.StartTicks >= kept[^1].EndTicks)
            {
                kept.Add(period);
                continue;
            }
            var same = period.StartTicks == kept[^1].StartTicks && period.EndTicks == kept[^1].EndTicks;
            var later = same && (kept[^1].Quality.HasFlag(Quality.Missing) || string.CompareOrdinal(period.Updated, kept[^1].Updated) > 0);
            var (stands, aside) = later ? (period, kept[^1]) : (kept[^1], period);
            kept[^1] = stands;
            if (aside.Quality.HasFlag(Quality.Missing)) continue;
            kept[^1] = stands with { Quality = stands.Quality | (same && stands.Kwh == aside.Kwh ? Quality.Repeated : Quality.Repeated | Quality.Doubtful) };
            extra++;
            Report(stands, aside, same, name, problems);
        }
        return new Channel(name, Flow, TimeAxis.OfTicks([.. kept.Select(p => p.StartTicks)], [.. kept.Select(p => p.EndTicks)]), [.. kept.Select(p => p.Kwh)], [.. kept.Select(p => p.Quality)])
        {
            Unit = Unit?.Name ?? (UnitText.Length > 0 ? UnitText : "unknown"), Meter = Nmi, Clock = Nem12Reader.MarketTime, Point = MeasurementPoint.Meter, File = file,
            ExtraReadings = extra, Resets = kept.Count(p => p.WentBack),
        };
    }

    private void Report(Nem13Period stands, Nem13Period aside, bool same, string name, ProblemList problems)
    {
        var equal = same && stands.Kwh == aside.Kwh;
        var when = Instant.FromUnixTimeTicks(aside.StartTicks).InZone(Nem12Reader.MarketTime).ToString("uuuu-MM-dd", CultureInfo.InvariantCulture);
        var found = string.Create(CultureInfo.InvariantCulture, $"the period of {name} from {when} {(same ? "more than once" : "over the end of another")}, with {(equal ? "the same quantity as" : "another quantity or length than")} in line {stands.Line}");
        problems.Add(aside.Line, 0, when, found, equal ? "each period once; it was counted once" : "each time once; the one updated last is counted, else the first, and this one is not",
            equal ? Severity.Note : Severity.Doubtful, IsEnergy ? aside.Kwh : 0);
    }

    private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.Ordinal);
}
