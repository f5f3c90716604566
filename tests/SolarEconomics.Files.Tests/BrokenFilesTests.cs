using NodaTime;

namespace SolarEconomics.Files.Tests;

/// <summary>Broken workbooks and Parquet files end in a result or a clear error, in little memory.</summary>
/// <remarks>Variants by seed, so that a failure can be repeated. How many: <c>READINGS_VARIANTS</c> per format (default 500).</remarks>
public sealed class BrokenFilesTests : IDisposable
{
    private static readonly int Variants = int.TryParse(Environment.GetEnvironmentVariable("READINGS_VARIANTS"), out var n) ? n : 500;
    private readonly Places _places = new();

    public void Dispose() => _places.Dispose();

    [Theory]
    [InlineData("xlsx")]
    [InlineData("parquet")]
    public void A_broken_file_ends_in_a_result_or_a_clear_error(string form)
    {
        var starts = Enumerable.Range(0, 96).Select(i => Instant.FromUtc(2024, 5, 1, 0, 0) + Duration.FromMinutes(30 * i)).ToArray();
        var readings = new Readings([new Channel("roof", FlowKind.Generation, starts, [.. starts.Select(s => s + Duration.FromMinutes(30))], [.. starts.Select((_, i) => i % 7 * 0.1)], new Quality[96])], [], []);
        var path = _places.At("whole." + form);
        if (form == "xlsx") readings.WriteXlsx(path);
        else readings.WriteParquet(path);
        var whole = File.ReadAllBytes(path);
        for (var seed = 0; seed < Variants; seed++)
        {
            InspectedFile file;
            try
            {
                file = Inspection.Of([_places.Write("variant." + form, Broken(whole, seed))], "Europe/Dublin").Files[0];
            }
            catch (Exception e)
            {
                throw new InvalidOperationException($"Variant {seed} threw.", e);
            }
            if (file.ExitCode == 2) Assert.True(file.Problems is [{ Found.Length: > 0 }, ..], $"Variant {seed} was refused without a reason.");
            foreach (var channel in file.Channels) Assert.True(channel.TotalKwh is null || double.IsFinite(channel.TotalKwh.Value), $"Variant {seed}: {channel.TotalKwh} kWh.");
        }
        Assert.InRange(GC.GetGCMemoryInfo().HeapSizeBytes, 0, 1L << 30);
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
