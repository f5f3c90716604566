using System.Globalization;
using NodaTime;
using NodaTime.Text;

namespace SolarEconomics.Benchmarks;

/// <summary>Local times in text to instants, the repeated hour by the order of the rows. Ours is the general text path that every layout takes.</summary>
internal static class StampToInstant
{
    internal static Comparison Of(MadeTable table)
    {
        var file = Places.Made("stamps.txt");
        File.WriteAllText(file, string.Join('\n', table.Stamps) + "\n");
        return new Comparison("text time to instant", "stamp", table.Stamps.Length,
            new InProcess<long[]>("ours", () => Ours(table.Stamps), Checksum),
            [
                new Rival(new InProcess<long[]>("NodaTime pattern + MapLocal", () => ByNodaTime(table.Stamps), Checksum), 8),
                new Rival(new PythonPeer("pandas to_datetime + tz_localize", "stamps.py", file, MadeTable.ZoneId), 15),
            ])
        {
            HoursOfData = table.HoursOfData,
        };
    }

    internal static long[] Ours(string[] stamps)
    {
        var clock = new StampClock(MadeTable.Site.Zone, StampPolicy.ByRowOrder);
        var unixMs = new long[stamps.Length];
        for (var i = 0; i < stamps.Length; i++)
        {
            if (!StampText.TryRead(stamps[i], DateOrder.YearMonthDay, out var stamp) || clock.Resolve(stamp.LocalMs, i, out unixMs[i]) > StampFate.Resolved)
                throw new FormatException(stamps[i]);
        }
        return unixMs;
    }

    internal static long[] ByNodaTime(string[] stamps)
    {
        var pattern = LocalDateTimePattern.Create("uuuu'-'MM'-'dd HH':'mm", CultureInfo.InvariantCulture);
        var zone = MadeTable.Site.Zone;
        var unixMs = new long[stamps.Length];
        for (var i = 0; i < stamps.Length; i++)
        {
            var map = zone.MapLocal(pattern.Parse(stamps[i]).Value);
            var instant = map.First().ToInstant().ToUnixTimeMilliseconds();
            if (map.Count == 2 && i > 0 && instant <= unixMs[i - 1]) instant = map.Last().ToInstant().ToUnixTimeMilliseconds();
            unixMs[i] = instant;
        }
        return unixMs;
    }

    private static double[] Checksum(long[] unixMs) => [unixMs.Length, unixMs.Sum(ms => ms / 60_000)];
}
