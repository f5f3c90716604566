using System.Globalization;

namespace SolarEconomics.Benchmarks;

/// <summary>What a fresh process of this program does when its whole life is timed. Prints its checksum.</summary>
internal static class ColdMode
{
    internal static void Read(string path)
    {
        var readings = IntervalCsv.Read(path);
        Print([readings.Channels[0].Count, .. readings.Channels.Select(c => c.Total.Kwh)]);
    }

    internal static void Call() => Print([TimeValue.Npv([1.0, 2.0], 0)]);

    private static void Print(double[] checksum) => Console.WriteLine(string.Join(' ', checksum.Select(n => n.ToString("R", CultureInfo.InvariantCulture))));
}
