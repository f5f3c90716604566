using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Joins what several files hold: parts of one channel become one, and where they overlap, the first file stands and the rest is listed.</summary>
internal static class Joining
{
    internal static Readings Of(IReadOnlyList<RecordContent> contents, DateTimeZone zone)
    {
        var problems = contents.SelectMany(c => c.Problems).ToList();
        var channels = new List<Channel>();
        foreach (var parts in Groups(contents))
        {
            if (parts.DistinctBy(p => p.File, StringComparer.Ordinal).Count() == 1)
            {
                channels.AddRange(parts);
                continue;
            }
            var list = new ProblemList(string.Join(", ", parts.Select(p => p.File).Distinct(StringComparer.Ordinal)));
            ReportOtherHeaders(parts, list);
            channels.Add(Join([.. parts, .. CounterBridges.Between(parts, list)], list));
            problems.AddRange(list.ToList());
        }
        return new Readings(channels, Counters(contents.SelectMany(c => c.Counters)), problems)
        {
            Zone = zone,
            Columns = [.. contents.SelectMany(c => c.Columns)],
        };
    }

    /// <summary>The parts of each channel. Headers that differ only in the case of letters or in the unit name one channel, unless one file has both.</summary>
    private static IEnumerable<List<Channel>> Groups(IReadOnlyList<RecordContent> contents)
    {
        foreach (var alike in contents.SelectMany(c => c.Channels).GroupBy(c => (Name: BareName(c), c.Flow, c.Meter, Quantity: c.IsEnergy ? "energy" : c.Unit)))
        {
            var exact = alike.GroupBy(c => (c.Name, c.Unit)).ToList();
            var isOne = exact.Count == 1 || alike.GroupBy(c => c.File, StringComparer.Ordinal).All(file => file.DistinctBy(c => (c.Name, c.Unit)).Count() == 1);
            if (isOne) yield return [.. alike];
            else
                foreach (var group in exact) yield return [.. group];
        }
    }

    /// <summary>The words of a channel's name in small letters, without its unit.</summary>
    private static string BareName(Channel channel)
    {
        var words = channel.Name.ToLowerInvariant().Split([' ', '_', '-', '(', ')', '[', ']'], StringSplitOptions.RemoveEmptyEntries);
        var unit = channel.Unit.ToLowerInvariant();
        return string.Join(' ', words.Length > 1 ? words.Where(w => !string.Equals(w, unit, StringComparison.Ordinal)) : words);
    }

    private static void ReportOtherHeaders(List<Channel> parts, ProblemList problems)
    {
        foreach (var other in parts.Where(p => !string.Equals(p.Name, parts[0].Name, StringComparison.Ordinal) || !string.Equals(p.Unit, parts[0].Unit, StringComparison.Ordinal)).DistinctBy(p => p.File, StringComparer.Ordinal))
            problems.Note(0, 0, other.Name, $"\"{other.Name}\" in {other.Unit} in {other.File}, where {parts[0].File} says \"{parts[0].Name}\" in {parts[0].Unit}", "one name and unit; they are one channel, in kWh");
    }

    private static List<Counter> Counters(IEnumerable<Counter> counters)
    {
        var joined = new List<Counter>();
        foreach (var group in counters.GroupBy(c => c.Device, StringComparer.OrdinalIgnoreCase))
        {
            var parts = group.ToList();
            joined.Add(parts.Count == 1
                ? parts[0]
                : parts[0] with { Readings = [.. parts.SelectMany(p => p.Readings).OrderBy(r => r.Date).DistinctBy(r => (r.Date, r.Kwh))] });
        }
        return joined;
    }

    private static Channel Join(List<Channel> parts, ProblemList problems)
    {
        var order = parts.SelectMany((p, part) => Enumerable.Range(0, p.Count).Select(i => (Part: part, Index: i))).ToArray();
        // A stable order: at the same start the part of the earlier file stands first.
        Array.Sort(order, (a, b) =>
        {
            var byStart = parts[a.Part].Starts[a.Index].CompareTo(parts[b.Part].Starts[b.Index]);
            return byStart != 0 ? byStart : a.Part != b.Part ? a.Part.CompareTo(b.Part) : a.Index.CompareTo(b.Index);
        });
        var (starts, ends) = (new List<Instant>(order.Length), new List<Instant>(order.Length));
        var (kwh, quality) = (new List<double>(order.Length), new List<Quality>(order.Length));
        var costs = parts.TrueForAll(p => p.Costs.Count == p.Count) ? new List<double>(order.Length) : null;
        var extra = parts.Sum(p => p.ExtraReadings);
        foreach (var (part, i) in order)
        {
            var p = parts[part];
            if (starts.Count > 0 && p.Starts[i] < ends[^1])
            {
                if (p.Quality[i].HasFlag(Quality.Missing)) continue;
                var same = p.Starts[i] == starts[^1] && p.Ends[i] == ends[^1];
                if (same && quality[^1].HasFlag(Quality.Missing))
                {
                    (kwh[^1], quality[^1]) = (p.Kwh[i], p.Quality[i]);
                    if (costs is not null) costs[^1] = p.Costs[i];
                    continue;
                }
                extra++;
                PutAside(p, i, same && p.Kwh[i] == kwh[^1], kwh[^1], problems);
                quality[^1] |= same && p.Kwh[i] == kwh[^1] ? Quality.Repeated : Quality.Repeated | Quality.Doubtful;
                continue;
            }
            starts.Add(p.Starts[i]);
            ends.Add(p.Ends[i]);
            kwh.Add(p.Kwh[i]);
            quality.Add(p.Quality[i]);
            costs?.Add(p.Costs[i]);
        }
        var first = parts[0];
        return new Channel(first.Name, first.Flow, [.. starts], [.. ends], [.. kwh], [.. quality])
        {
            Unit = first.Unit, Meter = first.Meter, Clock = first.Clock, Device = first.Device, Point = first.Point, File = problems.File,
            ExtraReadings = extra, Resets = parts.Sum(p => p.Resets), CounterStates = parts.TrueForAll(p => p.CounterStates is not null) ? parts.Sum(p => p.CounterStates) : null,
            Costs = costs ?? [], CostCurrency = first.CostCurrency,
        };
    }

    private static void PutAside(Channel part, int index, bool same, double keptKwh, ProblemList problems)
    {
        var when = NodaTime.Text.InstantPattern.General.Format(part.Starts[index]);
        var raw = part.Kwh[index].ToString("R", CultureInfo.InvariantCulture);
        if (same) problems.Note(0, 0, raw, $"\"{part.Name}\" at {when} in {part.File} too, with the same value", "each time in one file; it was counted once", part.Kwh[index]);
        else problems.Doubtful(0, 0, raw, string.Create(CultureInfo.InvariantCulture, $"\"{part.Name}\" at {when} in {part.File} too, {part.Kwh[index]:R} kWh over {(part.Ends[index] - part.Starts[index]).TotalMinutes:0.##} minutes where another file has {keptKwh:R} kWh in an interval that overlaps"), "each time in one file; the file named first is counted, this one is not", part.Kwh[index]);
    }
}
