using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>What a counter counted between the last state of one file and the first of the next.</summary>
internal static class CounterBridges
{
    /// <summary>One channel of one interval for each pause between files.</summary>
    internal static IEnumerable<Channel> Between(IReadOnlyList<Channel> parts, ProblemList problems)
    {
        CounterEnds? before = null;
        foreach (var part in parts.Where(p => p.CounterEnds is not null).OrderBy(p => p.CounterEnds!.First))
        {
            var next = part.CounterEnds!;
            if (before is not null && next.First > before.Last) yield return Bridge(part, before, next, problems);
            if (before is null || next.Last > before.Last) before = next;
        }
    }

    private static Channel Bridge(Channel part, CounterEnds before, CounterEnds next, ProblemList problems)
    {
        var step = CounterStep.Between(before.LastKwh, next.FirstKwh);
        var found = string.Create(CultureInfo.InvariantCulture, $"the counter \"{part.Name}\" at {before.LastKwh:R} kWh on {Iso(before.Last)}, where one file ends, and at {next.FirstKwh:R} kWh on {Iso(next.First)}, where {part.File} begins");
        var raw = next.FirstKwh.ToString("R", CultureInfo.InvariantCulture);
        if (step.WentBack) problems.Doubtful(0, 0, raw, found, step.Words);
        else problems.Note(0, 0, raw, found, string.Create(CultureInfo.InvariantCulture, $"files that follow each other; the {step.Kwh:0.######} kWh between are counted as one interval"));
        return new Channel(part.Name, part.Flow, [before.Last], [next.First], [step.Kwh], [step.WentBack ? Quality.Doubtful : Quality.Good])
        {
            Unit = part.Unit, Meter = part.Meter, Clock = part.Clock, Device = part.Device, Point = part.Point, Resets = step.WentBack ? 1 : 0, CounterStates = 0,
        };
    }

    private static string Iso(Instant instant) => NodaTime.Text.InstantPattern.General.Format(instant);
}
