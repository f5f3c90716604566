using NodaTime;
using NodaTime.TimeZones;

namespace SolarEconomics;

/// <summary>A clock with one rule for the start and one for the end of daylight saving, the same in every year.</summary>
internal sealed class SeasonZone : DateTimeZone
{
    private readonly Offset _standard;
    private readonly Offset _saving;
    private readonly SeasonRule _start;
    private readonly SeasonRule _end;

    internal SeasonZone(Offset standard, Offset saving, SeasonRule start, SeasonRule end)
        : base($"UTC{standard} with daylight saving", isFixed: false, Offset.Min(standard, standard + saving), Offset.Max(standard, standard + saving))
    {
        _standard = standard;
        _saving = saving;
        _start = start;
        _end = end;
    }

    /// <inheritdoc />
    public override ZoneInterval GetZoneInterval(Instant instant)
    {
        // Changes of three years around the instant are enough: the seasons on both sides of it lie among them.
        var year = instant.WithOffset(_standard).Year;
        var changes = new List<(Instant At, bool Saving)>(6);
        for (var y = Math.Max(1, year - 1); y <= Math.Min(9998, year + 1); y++)
        {
            changes.Add((_start.In(y).WithOffset(_standard).ToInstant(), true));
            changes.Add((_end.In(y).WithOffset(_standard + _saving).ToInstant(), false));
        }
        changes.Sort((a, b) => a.At.CompareTo(b.At));
        var next = changes.FindIndex(c => c.At > instant);
        Instant? from = next > 0 ? changes[next - 1].At : next < 0 ? changes[^1].At : null;
        Instant? to = next >= 0 ? changes[next].At : null;
        var inSaving = next >= 0 ? !changes[next].Saving : changes[^1].Saving;
        var saving = inSaving ? _saving : Offset.Zero;
        return new ZoneInterval(inSaving ? "daylight" : "standard", from, to, _standard + saving, saving);
    }
}
