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
        foreach (var group in contents.SelectMany(c => c.Channels).GroupBy(KeyOf))
        {
            var parts = group.ToList();
            if (parts.Count == 1 || parts.DistinctBy(p => p.File, StringComparer.Ordinal).Count() == 1)
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

    /// <summary>What makes one channel of several parts: energy is kWh by now, so its unit in the file counts no more than the letters' case.</summary>
    private static (string Name, FlowKind Flow, string? Meter, string Unit) KeyOf(Channel channel) =>
        (string.Join(' ', channel.Name.ToUpperInvariant().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), channel.Flow, channel.Meter, channel.IsEnergy ? "energy" : channel.Unit);

    private static void ReportOtherHeaders(List<Channel> parts, ProblemList problems)
    {
        foreach (var other in parts.Where(p => !string.Equals(p.Name, parts[0].Name, StringComparison.Ordinal) || !string.Equals(p.Unit, parts[0].Unit, StringComparison.Ordinal)).DistinctBy(p => p.File, StringComparer.Ordinal))
            problems.Note(0, 0, other.Name, $"\"{other.Name}\" in {other.Unit} in {other.File}, where {parts[0].File} says \"{parts[0].Name}\" in {parts[0].Unit}", "one name and unit; they are one channel, in kWh");
    }

    private static List<Counter> Counters(IEnumerable<Counter> counters)
    {
        var joined = new List<Counter>();
        foreach (var group in counters.GroupBy(c => c.Device, StringComparer.Ordinal))
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
                PutAside(p, i, same && p.Kwh[i] == kwh[^1], problems);
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

    private static void PutAside(Channel part, int index, bool same, ProblemList problems)
    {
        var when = NodaTime.Text.InstantPattern.General.Format(part.Starts[index]);
        var raw = part.Kwh[index].ToString("R", CultureInfo.InvariantCulture);
        if (same) problems.Note(0, 0, raw, $"\"{part.Name}\" at {when} in {part.File} too, with the same value", "each time in one file; it was counted once", part.Kwh[index]);
        else problems.Doubtful(0, 0, raw, $"\"{part.Name}\" at {when} in {part.File} too, with another value or length", "each time in one file; the file named first is counted, this one is not", part.Kwh[index]);
    }
}
