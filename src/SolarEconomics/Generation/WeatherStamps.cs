using NodaTime;
using NodaTime.Text;

namespace SolarEconomics;

/// <summary>Turns the stamps of a weather table into instants, and looks whether they follow each other step by step.</summary>
internal sealed class WeatherStamps(string file, DateTimeZone zone, List<Problem> lost)
{
    private static readonly OffsetDateTimePattern[] WithOffset =
    [
        OffsetDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm:sso<G>"), OffsetDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mmo<G>"),
        OffsetDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd HH:mm:sso<G>"), OffsetDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd HH:mmo<G>"),
    ];

    private Instant _last = Instant.MinValue;

    internal Instant Resolve(string text, int line, int column)
    {
        if (Parsed(text) is not { } instant)
        {
            Lose(line, column, text, $"\"{text}\"", "a time such as 2024-03-31 14:00, or with an offset 2024-03-31T14:00:00+01:00");
            return _last;
        }
        if (instant == Instant.MaxValue)
        {
            Lose(line, column, text, $"{text}, a time that {zone.Id} skipped that day", "a time that exists. If the logger keeps standard time all year, write stamps with its offset");
            return _last;
        }
        if (instant <= _last) Lose(line, column, text, $"{text}, not after the line before", "steps in the order of time, each once");
        return _last = instant;
    }

    /// <summary>The length that most steps have; every other step is a gap and is said.</summary>
    internal Duration StepOf(Instant[] instants, List<int> lines)
    {
        var step = Enumerable.Range(1, instants.Length - 1).Select(i => instants[i] - instants[i - 1]).GroupBy(d => d).MaxBy(g => g.Count())!.Key;
        for (var i = 1; i < instants.Length; i++)
        {
            var jump = instants[i] - instants[i - 1];
            if (jump == step) continue;
            var day = instants[i - 1].InZone(zone).Date;
            var isLeapDay = jump - step == Duration.FromDays(1) && day.PlusDays(1) is { Month: 2, Day: 29 };
            Lose(lines[i], 1, "", FormattableString.Invariant($"{jump.TotalMinutes:0.#} minutes since the line before, after {day:uuuu-MM-dd}"),
                FormattableString.Invariant($"steps of {step.TotalMinutes:0.#} minutes without a gap") + (isLeapDay ? "; a leap year has a 29 February: add it, or lay the file on another year" : ""));
        }
        return step;
    }

    /// <summary>The instant; <see cref="Instant.MaxValue"/> for a local time that was skipped; <see langword="null"/> for no time.</summary>
    private Instant? Parsed(string text)
    {
        foreach (var pattern in WithOffset)
            if (pattern.Parse(text).TryGetValue(default, out var stamp)) return stamp.ToInstant();
        return LocalStamp.Parsed(text) is { } local ? LocalStamp.InRowOrder(local, zone, _last) ?? Instant.MaxValue : null;
    }

    private void Lose(int line, int column, string raw, string found, string expected) => lost.Add(new Problem(file, line, column, raw, found, expected, Severity.Lost));
}
