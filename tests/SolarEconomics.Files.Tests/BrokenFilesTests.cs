using System.Diagnostics;
using System.Globalization;
using NodaTime;

namespace SolarEconomics.Files.Tests;

/// <summary>Broken workbooks and Parquet files end in a result or a clear error, in little time and memory, and no energy of a readable row disappears.</summary>
/// <remarks>Variants by seed, so that a failure can be repeated. How many: <c>READINGS_VARIANTS</c> per format (default 500).</remarks>
public sealed class BrokenFilesTests : IDisposable
{
    private static readonly int Variants = int.TryParse(Environment.GetEnvironmentVariable("READINGS_VARIANTS"), CultureInfo.InvariantCulture, out var n) ? n : 500;

    /// <summary>A hang, in processor time of this process: on a busy machine the clock on the wall measures the others.</summary>
    private static readonly TimeSpan Hang = TimeSpan.FromSeconds(5);

    private const long MostBytes = 1L << 30;
    private readonly Places _places = new();

    public void Dispose() => _places.Dispose();

    private static Readings Roof()
    {
        var starts = Enumerable.Range(0, 96).Select(i => Instant.FromUtc(2024, 5, 1, 0, 0) + Duration.FromMinutes(30 * i)).ToArray();
        return new Readings([new Channel("roof", FlowKind.Generation, starts, [.. starts.Select(s => s + Duration.FromMinutes(30))], [.. starts.Select((_, i) => i % 7 * 0.125)], new Quality[96])], [], []);
    }

    [Theory]
    [InlineData("xlsx")]
    [InlineData("parquet")]
    public void A_broken_file_ends_in_a_result_or_a_clear_error(string form)
    {
        var path = _places.At("whole." + form);
        if (form == "xlsx") Roof().WriteXlsx(path);
        else Roof().WriteParquet(path);
        var whole = File.ReadAllBytes(path);
        for (var seed = 0; seed < Variants; seed++) Inspect(seed, _places.Write("variant." + form, Broken(whole, seed)));
    }

    [Fact]
    public void Every_kwh_of_a_broken_sheet_is_in_a_total_or_in_the_problems()
    {
        for (var seed = 0; seed < Variants; seed++)
        {
            var sheet = BrokenSheet.Of(seed);
            var path = _places.Write("variant.xlsx", Workbook.OfRows(sheet.Xml));
            Assert.True(Inspect(seed, path).ExitCode < 2, $"Variant {seed} was refused.");
            AssertBalance(seed, sheet.Kwh, path);
        }
    }

    [Fact]
    public void Every_kwh_of_a_parquet_table_of_faults_is_in_a_total_or_in_the_problems()
    {
        for (var seed = 0; seed < Variants / 10; seed++)
        {
            var path = _places.At("variant.parquet");
            AssertBalance(seed, ParquetFaults.Write(path, seed), path);
        }
    }

    private static void AssertBalance(int seed, double kwh, string path)
    {
        var content = RecordReaders.Read(path, new ReadOptions { Zone = DateTimeZone.Utc });
        var counted = content.Channels.Where(c => c.IsEnergy).Sum(c => c.Total.Kwh) + content.Problems.Sum(p => p.UncountedKwh);
        Assert.True(Math.Abs(kwh - counted) < 1e-9, $"Variant {seed}: in the file {kwh:R}, counted and listed {counted:R}\n{string.Join('\n', content.Problems)}");
    }

    private static InspectedFile Inspect(int seed, string path)
    {
        var (time, bytes) = (Environment.CpuUsage.TotalTime, GC.GetAllocatedBytesForCurrentThread());
        var wall = Stopwatch.StartNew();
        InspectedFile file;
        try
        {
            file = Inspection.Of([path], "UTC").Files[0];
        }
        catch (Exception e)
        {
            throw new InvalidOperationException($"Variant {seed} threw.", e);
        }
        // Where little time passed, what the processor did for other tests meanwhile cannot be a hang of this one.
        Assert.True(wall.Elapsed < Hang || Environment.CpuUsage.TotalTime - time < Hang, $"Variant {seed} took {wall.Elapsed}.");
        // What was allocated in all is more than what was ever held at once.
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - bytes < MostBytes, $"Variant {seed} took {GC.GetAllocatedBytesForCurrentThread() - bytes} bytes.");
        if (file.ExitCode == 2) Assert.True(file.Problems is [{ Found.Length: > 0 }, ..], $"Variant {seed} was refused without a reason.");
        foreach (var channel in file.Channels) Assert.True(channel.TotalKwh is null || double.IsFinite(channel.TotalKwh.Value), $"Variant {seed}: {channel.TotalKwh} kWh.");
        return file;
    }

    private static byte[] Broken(byte[] whole, int seed)
    {
        var random = new Random(seed);
        var bytes = whole.ToArray();
        for (var times = random.Next(1, 4); times > 0 && bytes.Length > 8; times--)
        {
            var at = random.Next(bytes.Length);
            switch (random.Next(6))
            {
                case 0: bytes[at] ^= (byte)(1 << random.Next(8)); break;
                case 1: bytes[at] = (byte)random.Next(256); break;
                case 2: bytes = bytes[..at]; break;
                case 3: bytes = [.. bytes[..at], .. bytes[random.Next(bytes.Length)..]]; break;
                case 4: random.NextBytes(bytes.AsSpan(at, Math.Min(8, bytes.Length - at))); break;
                default: bytes.AsSpan(at, Math.Min(4, bytes.Length - at)).Fill(0xFF); break;
            }
        }
        return bytes;
    }
}
