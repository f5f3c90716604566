using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Finds rows of a device that lost its clock and began at 1970 or 2000 again, beside rows of real years.</summary>
internal static class LostClock
{
    private static readonly long[] Beginnings = [BeginOf(1970), BeginOf(2000)];

    /// <summary>A clock without a battery begins at its year's start; what stands there is at most so long after it. Unit: milliseconds.</summary>
    private const long LongestMs = 366L * 86_400_000;

    /// <summary>Years of real records. Unit: milliseconds since 1970.</summary>
    private static readonly long RealFrom = BeginOf(2002);

    /// <summary>Reports such rows, which stand at the front of a table in order, and marks their values as doubtful.</summary>
    internal static void Report(CsvRows rows, ProblemList problems)
    {
        var at = rows.Table.Stamps;
        if (at.Count < 2 || at[at.Count - 1] < RealFrom || !IsLost(at[0])) return;
        var lost = 0;
        while (lost < at.Count && IsLost(at[lost])) lost++;
        for (var i = 0; i < lost; i++)
            for (var c = 0; c < rows.Values.Count; c++)
                if (!rows.Table.Quality(c)[i].HasFlag(Quality.Missing)) rows.Table.Flag(i, c, Quality.Doubtful);
        var line = rows.Table.LineOf(0);
        problems.Doubtful(line, 1, Instant.FromUnixTimeMilliseconds(at[0]).ToString("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture),
            string.Create(CultureInfo.InvariantCulture, $"{lost} rows at the time that a device without its clock shows, beside rows from {Instant.FromUnixTimeMilliseconds(at[lost]).InUtc().Year} on"),
            "the years of the record; they are counted at the time they name and marked doubtful. Channel.RealignedOnSolarNoon puts such a stretch of generation where it belongs");
    }

    private static bool IsLost(long ms) => Array.Exists(Beginnings, b => ms >= b - 86_400_000 && ms < b + LongestMs);

    private static long BeginOf(int year) => Instant.FromUtc(year, 1, 1, 0, 0).ToUnixTimeMilliseconds();
}
