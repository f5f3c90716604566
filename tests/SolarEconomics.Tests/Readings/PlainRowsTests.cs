using System.Globalization;
using System.Text;

namespace SolarEconomics.Tests;

/// <summary>The fast path against the general one: the same channels and the same problems, whatever is done to the file.</summary>
public sealed class PlainRowsTests : IDisposable
{
    private const int Variants = 800;
    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    /// <summary>Two days around the autumn change, one around the spring change, three columns, a mark and a text.</summary>
    private static string Sample()
    {
        var text = new StringBuilder("# Invented data for a test\nstart,import (kWh),export (Wh),generation south roof (kWh),battery full,remark\n");
        var zone = Zones.Of("Europe/Dublin");
        var seed = new Random(5);
        foreach (var day in new[] { new NodaTime.LocalDate(2024, 3, 31), new NodaTime.LocalDate(2024, 10, 26), new NodaTime.LocalDate(2024, 10, 27) })
            for (var at = LocalDays.StartOf(day, zone); at < LocalDays.StartOf(day.PlusDays(1), zone); at += NodaTime.Duration.FromMinutes(30))
                text.Append(CultureInfo.InvariantCulture, $"{at.InZone(zone):uuuu-MM-dd HH:mm},{seed.NextDouble():0.000},{seed.Next(900)},{seed.NextDouble():0.0#},{seed.Next(2)},ok\n");
        return text.ToString();
    }

    [Fact]
    public void Both_paths_agree_on_a_whole_file() => AssertAgree(Encoding.UTF8.GetBytes(Sample()));

    [Fact]
    public void Both_paths_agree_on_broken_variants()
    {
        var bytes = Encoding.UTF8.GetBytes(Sample());
        for (var seed = 0; seed < Variants; seed++) AssertAgree(Mutation.Of(bytes, seed), seed);
    }

    [Fact]
    public void A_row_costs_no_object_and_at_most_three_times_its_columns()
    {
        var (few, many) = (AllocatedFor(20_000), AllocatedFor(60_000));
        // Three values of 8 bytes, three qualities of 1; the times of a regular record are two numbers for all rows.
        const int ColumnsPerRow = 3 * 9;
        Assert.InRange((many - few) / 40_000.0, ColumnsPerRow, 3 * ColumnsPerRow);
    }

    private long AllocatedFor(int rows)
    {
        var text = new StringBuilder("start,import (kWh),export (kWh),generation (kWh)\n");
        var at = new NodaTime.LocalDateTime(2020, 1, 1, 0, 0);
        for (var i = 0; i < rows; i++, at = at.PlusMinutes(5)) text.Append(at.ToString("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture)).Append(",0.123,0.456,0.789\n");
        var path = _files.Write("big.csv", text.ToString());
        var options = new ReadOptions { Zone = NodaTime.DateTimeZone.Utc };
        // The least of some: a collection that another test brings about empties shared buffers, and the next read makes them again.
        return Enumerable.Range(0, 4).Min(_ =>
        {
            var before = GC.GetAllocatedBytesForCurrentThread();
            RecordReaders.Read(path, options);
            return GC.GetAllocatedBytesForCurrentThread() - before;
        });
    }

    private void AssertAgree(byte[] bytes, int seed = -1)
    {
        var path = _files.Write("variant.csv", bytes);
        var zone = Zones.Of("Europe/Dublin");
        var fast = Outcome(path, new ReadOptions { Zone = zone });
        var general = Outcome(path, new ReadOptions { Zone = zone, PlainRowsToo = true });
        if (fast == general) return;
        var differs = fast.Split('\n').Zip(general.Split('\n')).First(p => p.First != p.Second);
        Assert.Fail($"Variant {seed}: fast\n{differs.First}\ngeneral\n{differs.Second}\nkept as {File.ReadAllText(path)}");
    }

    private static string Outcome(string path, ReadOptions options)
    {
        try
        {
            var content = RecordReaders.Read(path, options);
            var text = new StringBuilder();
            foreach (var channel in content.Channels)
            {
                text.Append(channel.Name).Append(' ');
                for (var i = 0; i < channel.Count; i++)
                    text.Append(CultureInfo.InvariantCulture, $"{channel.Starts[i].ToUnixTimeMilliseconds()}-{channel.Ends[i].ToUnixTimeMilliseconds()}={BitConverter.DoubleToInt64Bits(channel.Kwh[i]):x}/{channel.Quality[i]};");
                text.Append('\n');
            }
            return text.AppendJoin('\n', content.Problems).ToString();
        }
        catch (RecordException e)
        {
            return e.Message + "\n" + string.Join('\n', e.Problems);
        }
    }
}
