using System.Globalization;
using NodaTime;

namespace SolarEconomics.Benchmarks;

/// <summary>Reading a NEM12 file of two channels in five-minute values.</summary>
internal static class Nem12
{
    private const int PerDay = 288;

    internal static Comparison Of(int days)
    {
        var path = Make(days);
        return new Comparison($"NEM12, 5 minutes, 2 channels, {days} days", "value", 2L * days * PerDay,
            new InProcess<Readings>("ours", () => Readings.Load(path, MadeTable.Site), Checksum),
            [
                new Rival(new PythonPeer("numpy, line by line", "nem12_numpy.py", path), 5),
                new Rival(new PythonPeer("pandas melt", "nem12_pandas.py", path), 25),
            ])
        {
            Bytes = new FileInfo(path).Length, HoursOfData = days * 24.0,
        };
    }

    private static double[] Checksum(Readings readings) =>
        [.. readings.Channels.OrderBy(c => c.Name, StringComparer.Ordinal).SelectMany(c => (double[])[c.Count, c.Total.Kwh])];

    private static string Make(int days)
    {
        var path = Places.Made(string.Create(CultureInfo.InvariantCulture, $"nem12-{days}.csv"));
        var random = new Random(20_260_302);
        using var file = new StreamWriter(path) { NewLine = "\n" };
        file.WriteLine("100,NEM12,202601010000,MADEBY,MADEFOR");
        foreach (var suffix in (string[])["B1", "E1"])
        {
            file.WriteLine($"200,6000000001,B1E1,{suffix},{suffix},{suffix},MADE01,kWh,5,");
            for (var day = new LocalDate(2023, 1, 1); day < new LocalDate(2023, 1, 1).PlusDays(days); day = day.PlusDays(1))
            {
                file.Write("300," + day.ToString("uuuuMMdd", CultureInfo.InvariantCulture));
                for (var i = 0; i < PerDay; i++) file.Write(string.Create(CultureInfo.InvariantCulture, $",{0.4 * random.NextDouble():0.###}"));
                file.WriteLine(",A,,,20260101000000,");
            }
        }
        file.WriteLine("900");
        return path;
    }
}
