using System.Globalization;
using System.Text.RegularExpressions;

namespace SolarEconomics;

/// <summary>Finds in a line of headers the columns that stand for the intervals of a day: times of the day, or numbers from 0 or 1 on.</summary>
internal static partial class SlotHeaders
{
    private const int MinutesPerDay = 1440;
    private static readonly int[] StepsOfTimes = [1, 5, 10, 15, 20, 30, 60];
    private static readonly int[] CountsOfNumbers = [288, 144, 96, 48, 24];

    /// <summary>Fewer columns than this are no day.</summary>
    internal const int Fewest = 24;

    /// <summary>Words before a number or time that name nothing.</summary>
    private static readonly string[] NoNames = ["hour", "hr", "h", "hh", "he", "interval", "int", "i", "period", "p", "slot", "value", "val", "v", "q", "t", "kwh", "wh", "stunde", "intervall"];

    internal static IReadOnlyList<SlotGroup> FindAll(string[] headers)
    {
        var groups = new List<SlotGroup>();
        for (var at = 0; at + Fewest <= headers.Length;)
        {
            var group = OfTimes(headers, at) ?? OfNumbers(headers, at);
            if (group is not null) groups.Add(group);
            at = group is null ? at + 1 : group.Slots.Max(s => s.Column) + 1;
        }
        return groups;
    }

    private static SlotGroup? OfTimes(string[] headers, int from)
    {
        if (TimeOf(headers[from]) is not { } first || TimeOf(headers[from + 1]) is not { } second) return null;
        var step = second.Minutes - first.Minutes;
        // A day begins at 00:00 where headers are starts of intervals, and one step later where they are ends.
        if (!StepsOfTimes.Contains(step) || (first.Minutes != 0 && first.Minutes != step)) return null;
        var slots = new List<Slot>();
        var (expected, seconds) = (first.Minutes, 0);
        for (var column = from; column < headers.Length; column++)
        {
            if (TimeOf(headers[column]) is not { } time || !string.Equals(time.Name, first.Name, StringComparison.OrdinalIgnoreCase)) break;
            var minutes = time.Minutes == MinutesPerDay - 1 && step > 1 ? MinutesPerDay : time.Minutes;
            var start = (minutes - first.Minutes + MinutesPerDay) % MinutesPerDay;
            if (minutes % MinutesPerDay == expected % MinutesPerDay && slots.Count - seconds < MinutesPerDay / step)
            {
                slots.Add(new Slot(column, start, SecondPass: false));
                expected += step;
            }
            else if (slots.Exists(s => s.Minutes == start) && !slots.Exists(s => s.Minutes == start && s.SecondPass) && seconds < 120 / step)
            {
                slots.Add(new Slot(column, start, SecondPass: true));
                seconds++;
            }
            else
            {
                break;
            }
        }
        return slots.Count - seconds == MinutesPerDay / step ? new SlotGroup(Bare(first.Name), step, Numbered: false, slots) : null;
    }

    private static SlotGroup? OfNumbers(string[] headers, int from)
    {
        if (NumberOf(headers[from]) is not { } first || first.Number > 1) return null;
        var count = 1;
        while (from + count < headers.Length && NumberOf(headers[from + count]) is { } next && next.Number == first.Number + count
            && string.Equals(next.Name, first.Name, StringComparison.OrdinalIgnoreCase)) count++;
        foreach (var perDay in CountsOfNumbers)
        {
            // One hour more than a day: columns that only the long day of autumn fills.
            if (count != perDay && count != perDay + (perDay / 24)) continue;
            var step = MinutesPerDay / perDay;
            return new SlotGroup(Bare(first.Name), step, Numbered: true, [.. Enumerable.Range(0, count).Select(k => new Slot(from + k, k * step, SecondPass: false))]);
        }
        return null;
    }

    private static string Bare(string name) =>
        string.Join(' ', name.Split([' ', '_', '-', '(', ')', ':', '[', ']'], StringSplitOptions.RemoveEmptyEntries).Where(w => !NoNames.Contains(w, StringComparer.OrdinalIgnoreCase)));

    private static (string Name, int Minutes)? TimeOf(string header)
    {
        var match = Time().Match(header.Trim());
        if (!match.Success) return null;
        var text = match.Groups["hour"].Value + ":" + match.Groups["minute"].Value + match.Groups["half"].Value;
        return StampText.TryTime(text, out var ms) ? (match.Groups["name"].Value.Trim(), (int)(ms / 60_000)) : null;
    }

    private static (string Name, int Number)? NumberOf(string header)
    {
        var match = Number().Match(header.Trim());
        return match.Success ? ((match.Groups["name"].Value.Trim() + " " + match.Groups["after"].Value.Trim()).Trim(), int.Parse(match.Groups["number"].Value, CultureInfo.InvariantCulture)) : null;
    }

    /// <summary>A time of day, perhaps with its end, with words before it, and a mark behind it that tells the second pass of an hour.</summary>
    [GeneratedRegex(@"^(?<name>[^\d]*?)(?<hour>\d{1,2})(:|\.|h)?(?<minute>\d{2})((:|\.)00)?\s*(?<half>[AaPp]\.?[Mm]\.?)?(\s*(-|–|to|bis)\s*\d{1,2}(:|\.|h)?\d{2}((:|\.)\d{2})?\s*([AaPp]\.?[Mm]\.?)?)?\s*(\(?(kWh|Wh|kW|W)\)?)?\s*(\(2\)|2nd|[AaBb*])?$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Time();

    [GeneratedRegex(@"^(?<name>\D*?)(?<number>\d{1,3})(?<after>\D*)$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Number();
}
