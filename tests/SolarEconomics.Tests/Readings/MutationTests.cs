using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json;

namespace SolarEconomics.Tests;

/// <summary>Broken variants of every sample end in a result or a clear error, and no energy of a readable row disappears.</summary>
/// <remarks>Variants by seed, so that a failure can be repeated. How many: <c>READINGS_VARIANTS</c> per small sample (default 1,600, over 20,000 in all), a twentieth of that
/// for the whole files. As many of every sample: <c>READINGS_VARIANTS=20000 dotnet test --filter "MutationTests|BrokenFilesTests"</c>.</remarks>
public sealed partial class MutationTests : IDisposable
{
    private static readonly int Variants = int.TryParse(Environment.GetEnvironmentVariable("READINGS_VARIANTS"), CultureInfo.InvariantCulture, out var n) ? n : 1600;

    /// <summary>A hang, by the clock and in processor time of this process: on a busy machine the clock alone measures what others do.</summary>
    private static readonly TimeSpan Hang = TimeSpan.FromSeconds(5);

    private const long MostBytes = 1L << 30;

    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    /// <summary>The head of every sample, cut at a line, and small files of the kinds for which there is no sample.</summary>
    public static TheoryData<string> Small =>
    [
        "nem12-5min-solar-month.csv", "nem12-30min-quality-and-500.csv", "espi", "daily-solar-wind-load-2006-2017.csv",
        "meter", "counters", "decimal-comma", "power", "long", "parts", "days", "nem13", "names",
    ];

    public static TheoryData<string> Whole => [.. TestFiles.Samples];

    [Theory, MemberData(nameof(Small))]
    public void A_broken_small_file_ends_in_a_result_or_a_clear_error(string name) => Break(BytesOf(name), Variants);

    [Theory, MemberData(nameof(Whole))]
    public void A_broken_whole_sample_ends_in_a_result_or_a_clear_error(string name) => Break(File.ReadAllBytes(TestFiles.Sample(name)), Math.Max(1, Variants / 20));

    private void Break(byte[] original, int variants) => Parallel.For(0, variants, seed => BreakOnce(original, seed));

    private void BreakOnce(byte[] original, int seed)
    {
        var path = _files.Write($"variant-{Environment.CurrentManagedThreadId}.csv", Mutation.Of(original, seed));
        var (time, processor, bytes) = (Stopwatch.StartNew(), Environment.CpuUsage.TotalTime, GC.GetAllocatedBytesForCurrentThread());
        Inspection inspection;
        try
        {
            inspection = Inspection.Of([path], seed % 7 == 0 ? null : "Europe/Dublin");
        }
        catch (Exception e)
        {
            throw new InvalidOperationException($"Variant {seed} threw.", e);
        }
        Assert.True(time.Elapsed < Hang || Environment.CpuUsage.TotalTime - processor < Hang, $"Variant {seed} took {time.Elapsed}.");
        // What was allocated in all is more than what was ever held at once.
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - bytes < MostBytes, $"Variant {seed} took {GC.GetAllocatedBytesForCurrentThread() - bytes} bytes.");
        var file = inspection.Files[0];
        Assert.InRange(file.ExitCode, 0, 2);
        if (file.ExitCode == 2) Assert.True(file.Problems.Count > 0 && file.Problems[0].Found.Length > 0, $"Variant {seed} was refused without a reason.");
        Assert.True(file.Problems.Count <= 103, $"Variant {seed} lists {file.Problems.Count} problems.");
        foreach (var channel in file.Channels)
            Assert.True(channel.TotalKwh is null || double.IsFinite(channel.TotalKwh.Value), $"Variant {seed}: {channel.TotalKwh} kWh.");
        if (seed % 50 == 0) JsonDocument.Parse(inspection.ToJson()).Dispose();
    }

    private static byte[] BytesOf(string name) => name switch
    {
        "meter" => Encoding.UTF8.GetBytes("# Invented data for a test\nstart,import (kWh),export (Wh),generation south roof (kWh),battery full\n" + Rows(i => FormattableString.Invariant($"{i % 7 * 0.125},{i * 10},{i % 5 * 0.3:0.0},{i % 2}"))),
        "decimal-comma" => Encoding.UTF8.GetBytes("Zeit;Bezug (kWh);Einspeisung (kWh)\n" + Rows(i => FormattableString.Invariant($"{i % 7};0,{i:00}"), "dd.MM.uuuu HH:mm", ';')),
        "power" => Encoding.UTF8.GetBytes("time,PV (W)\n" + Rows(i => FormattableString.Invariant($"{i * 10}"))),
        "long" => Encoding.UTF8.GetBytes("time,register,value,unit\n" + Rows(i => FormattableString.Invariant($"import,{i % 7 * 0.125},kWh")) + Rows(i => FormattableString.Invariant($"export,{i * 10},Wh"))),
        "parts" => Encoding.UTF8.GetBytes("Date,Period,import (kWh)\n" + string.Concat(Enumerable.Range(0, 96).Select(i => FormattableString.Invariant($"2024-03-{30 + (i / 48)},{(i % 48) + 1},{i % 9 * 0.1:0.0}\n")))),
        "days" => Encoding.UTF8.GetBytes("Import in kWh\n" + DayHeader() + string.Concat(Enumerable.Range(25, 7).Select(d => $"2024-03-{d}," + string.Join(',', Enumerable.Range(0, 24).Select(h => d == 31 && h == 1 ? "" : FormattableString.Invariant($"{h % 7 * 0.125}"))) + "\n"))),
        "nem13" => Encoding.UTF8.GetBytes("100,NEM13,202404021200,MDP,RETAILER\n" + string.Concat(Enumerable.Range(1, 9).Select(Register)) + "900\n"),
        "names" => Encoding.UTF8.GetBytes("Datum;Verbrauch (kWh)\n" + string.Concat(Enumerable.Range(1, 31).Select(d => FormattableString.Invariant($"Fr {d}. März 2024;1'{d:000},5\n")))),
        "counters" => "# Invented data for a test\ndate,device,kwh,days uncertain,photo,note\n2023-01-01,south,100,0,,\n2023-02-01,south,250,3,a.jpg,\"dim, dark\"\n2023-03-01,south,40,,,reset\n2023-01-05,west,4812,,,\n"u8.ToArray(),
        "espi" => SmallFeed(File.ReadAllText(TestFiles.Sample("espi-hourly-march-2011.xml"))),
        _ => CutAtLine(File.ReadAllBytes(TestFiles.Sample(name)), 3000),
    };

    private static string DayHeader() => "date," + string.Join(',', Enumerable.Range(0, 24).Select(h => FormattableString.Invariant($"{h:00}:00"))) + "\n";

    private static string Register(int month) => FormattableString.Invariant(
        $"250,4001234567,E1B1,1,11,11,MTR1,E,{month * 100},20240{month}01000000,A,,,{(month + 1) * 100},2024{month + 1:00}01000000,{"AESFN"[month % 5]},,,{month * 10.5},kWh,,20240402120000,\n550,N,,N,\n");

    private static string Rows(Func<int, string> values, string pattern = "uuuu-MM-dd HH:mm", char delimiter = ',')
    {
        var text = new StringBuilder();
        var at = new NodaTime.LocalDateTime(2024, 3, 30, 20, 0);
        for (var i = 0; i < 40; i++, at = at.PlusMinutes(30))
            if (at.Date.Day != 31 || at.Hour != 1) text.Append(at.ToString(pattern, CultureInfo.InvariantCulture)).Append(delimiter).Append(values(i)).Append('\n');
        return text.ToString();
    }

    /// <summary>The feed up to its fortieth reading, closed again, with the type of its readings, without the comment in front.</summary>
    private static byte[] SmallFeed(string text)
    {
        var (at, end) = (text.IndexOf("<feed", StringComparison.Ordinal), 0);
        for (var reading = 0; reading < 40; reading++) end = text.IndexOf("</IntervalReading>", end + 1, StringComparison.Ordinal);
        var type = text.IndexOf("<ReadingType", StringComparison.Ordinal);
        var entry = text.LastIndexOf("<entry>", type, StringComparison.Ordinal);
        var last = text.IndexOf("</entry>", type, StringComparison.Ordinal);
        return Encoding.UTF8.GetBytes(text[at..end] + "</IntervalReading>\n</IntervalBlock></content></entry>\n" + text[entry..last] + "</entry>\n</feed>\n");
    }

    private static byte[] CutAtLine(byte[] bytes, int about) =>
        bytes.Length <= about ? bytes : bytes[..(Array.IndexOf(bytes, (byte)'\n', about) + 1)];
}
