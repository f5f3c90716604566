using System.Globalization;
using System.Text;
using System.Text.Json;

namespace SolarEconomics.Tests;

/// <summary>Broken variants of every sample end in a result or a clear error, and no energy of a readable row disappears.</summary>
/// <remarks>Variants by seed, so that a failure can be repeated. How many: <c>READINGS_VARIANTS</c> per small sample (default 2,600), a twentieth of that
/// for the whole files. The full run: <c>READINGS_VARIANTS=20000 dotnet test tests/SolarEconomics.Tests --filter MutationTests</c>.</remarks>
public sealed class MutationTests : IDisposable
{
    private const double TooLargeKwh = 1e14;
    private static readonly int Variants = int.TryParse(Environment.GetEnvironmentVariable("READINGS_VARIANTS"), CultureInfo.InvariantCulture, out var n) ? n : 2600;

    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    /// <summary>The head of every sample, cut at a line, and small files of the kinds for which there is no sample.</summary>
    public static TheoryData<string> Small =>
    [
        "nem12-5min-solar-month.csv", "nem12-30min-quality-and-500.csv", "espi-hourly-march-2011.xml", "daily-solar-wind-load-2006-2017.csv",
        "meter", "counters", "decimal-comma", "power",
    ];

    public static TheoryData<string> Whole => [.. TestFiles.Samples];

    [Theory, MemberData(nameof(Small))]
    public void A_broken_small_file_ends_in_a_result_or_a_clear_error(string name) => Break(BytesOf(name), Variants);

    [Theory, MemberData(nameof(Whole))]
    public void A_broken_whole_sample_ends_in_a_result_or_a_clear_error(string name) => Break(File.ReadAllBytes(TestFiles.Sample(name)), Math.Max(1, Variants / 20));

    [Fact]
    public void Every_kwh_of_a_broken_table_is_in_a_total_or_in_the_problems() => Balance("meter", "variant.csv", NaiveTable);

    [Fact]
    public void Every_kwh_of_a_broken_nem12_file_is_in_a_total_or_in_the_problems() => Balance("nem12-30min-quality-and-500.csv", "variant.nem12", NaiveNem12);

    private void Break(byte[] original, int variants)
    {
        for (var seed = 0; seed < variants; seed++)
        {
            var path = _files.Write("variant.csv", Mutation.Of(original, seed));
            Inspection inspection;
            try
            {
                inspection = Inspection.Of([path], seed % 7 == 0 ? null : "Europe/Dublin");
            }
            catch (Exception e)
            {
                throw new InvalidOperationException($"Variant {seed} threw.", e);
            }
            var file = inspection.Files[0];
            Assert.InRange(file.ExitCode, 0, 2);
            if (file.ExitCode == 2) Assert.True(file.Problems.Count > 0 && file.Problems[0].Found.Length > 0, $"Variant {seed} was refused without a reason.");
            Assert.True(file.Problems.Count <= 103, $"Variant {seed} lists {file.Problems.Count} problems.");
            foreach (var channel in file.Channels)
                Assert.True(channel.TotalKwh is null || double.IsFinite(channel.TotalKwh.Value), $"Variant {seed}: {channel.TotalKwh} kWh.");
            if (seed % 50 == 0) JsonDocument.Parse(inspection.ToJson()).Dispose();
        }
    }

    /// <summary>Breaks the rows below the head, which stays whole, and compares with a reader that only splits and adds.</summary>
    private void Balance(string name, string fileName, Func<string, double?> naive)
    {
        var bytes = BytesOf(name);
        var head = Array.IndexOf(bytes, (byte)'\n', Array.IndexOf(bytes, (byte)'\n') + 1) + 1;
        var compared = 0;
        for (var seed = 0; seed < Variants / 2; seed++)
        {
            byte[] variant = [.. bytes.AsSpan(0, head), .. Mutation.Of(bytes[head..], seed)];
            var text = Encoding.UTF8.GetString(variant);
            if (naive(text) is not { } expected) continue;
            RecordContent content;
            try
            {
                content = RecordReaders.Read(_files.Write(fileName, variant), new ReadOptions { Zone = Zones.Of("Europe/Dublin") });
            }
            catch (RecordException)
            {
                continue; // Refused as a whole, in words: nothing was counted, and nothing hidden.
            }
            compared++;
            var counted = content.Channels.Where(c => c.IsEnergy).Sum(c => c.Total.Kwh) + content.Problems.Sum(p => p.UncountedKwh);
            Assert.True(Math.Abs(expected - counted) <= 1e-9 * Math.Max(1, Math.Abs(expected)),
                $"Variant {seed}: naive {expected:R}, counted and listed {counted:R}, difference {expected - counted:R}\n{string.Join('\n', content.Problems)}\n{text}");
        }
        Assert.InRange(compared, Variants / 6, Variants / 2);
    }

    /// <summary>Adds the numbers of three columns; null where quotes, lone returns or too many fields leave open what a field is.</summary>
    private static double? NaiveTable(string text)
    {
        if (text.AsSpan().IndexOfAny("\"\0") >= 0 || text.Replace("\r\n", "\n", StringComparison.Ordinal).Contains('\r', StringComparison.Ordinal)) return null;
        var sum = 0.0;
        foreach (var line in text.Split('\n').Skip(2).Select(l => l.TrimEnd('\r')))
        {
            var fields = line.Split(',');
            if (fields.Length > 5) return null;
            if (fields.First(f => f.Trim().Length > 0 || f == fields[^1]).Trim().Equals("total", StringComparison.OrdinalIgnoreCase)) continue;
            for (var i = 1; i <= 3 && i < fields.Length; i++)
                if (NaiveNumber(fields[i], i == 2 ? 1000 : 1) is { } kwh) sum += kwh;
        }
        return sum;
    }

    private static double? NaiveNem12(string text)
    {
        if (text.AsSpan().IndexOfAny("\"\0\uFFFD") >= 0) return null;
        var (sum, perDay, divisor) = (0.0, 0, 0);
        foreach (var line in text.Split('\n').Select(l => l.TrimEnd('\r')))
        {
            var fields = line.Split(',');
            if (fields[0] == "900") perDay = 0;
            if (fields[0] == "200")
            {
                perDay = 0;
                // A stream whose unit or length was broken counts nowhere, and says so.
                if (fields.Length < 9 || fields[1].Trim().Length == 0 || fields[4].Trim().Length == 0) continue;
                if (!int.TryParse(fields[8].Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var minutes) || minutes is < 1 or > 1440 || 1440 % minutes != 0) return null;
                if (fields[7].Trim() != "kWh") return null;
                (perDay, divisor) = (1440 / minutes, 1);
            }
            if (fields[0] != "300") continue;
            if (perDay == 0) return null;
            for (var i = 2; i < 2 + perDay && i < fields.Length; i++)
            {
                var flag = fields[i].Trim().ToUpperInvariant();
                if (flag is ['A' or 'E' or 'F' or 'N' or 'S' or 'V'] or ['A' or 'E' or 'F' or 'N' or 'S' or 'V', >= '0' and <= '9', >= '0' and <= '9']) break;
                if (NaiveNumber(fields[i], divisor) is { } kwh) sum += kwh;
            }
        }
        return sum;
    }

    private static double? NaiveNumber(string field, int divisor) =>
        field.Trim() is { Length: > 0 and <= 64 } text && !text.Any(c => char.IsLetter(c) && c is not ('e' or 'E'))
        && double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out var number)
        && Math.Abs(number / divisor) <= TooLargeKwh ? number / divisor : null;

    private static byte[] BytesOf(string name) => name switch
    {
        "meter" => Encoding.UTF8.GetBytes("# Invented data for a test\nstart,import (kWh),export (Wh),generation south roof (kWh),battery full\n" + Rows(i => FormattableString.Invariant($"{i % 7 * 0.125},{i * 10},{i % 5 * 0.3:0.0},{i % 2}"))),
        "decimal-comma" => Encoding.UTF8.GetBytes("Zeit;Bezug (kWh);Einspeisung (kWh)\n" + Rows(i => FormattableString.Invariant($"{i % 7};0,{i:00}"), "dd.MM.uuuu HH:mm", ';')),
        "power" => Encoding.UTF8.GetBytes("time,PV (W)\n" + Rows(i => FormattableString.Invariant($"{i * 10}"))),
        "counters" => "# Invented data for a test\ndate,device,kwh,days uncertain,photo,note\n2023-01-01,south,100,0,,\n2023-02-01,south,250,3,a.jpg,\"dim, dark\"\n2023-03-01,south,40,,,reset\n2023-01-05,west,4812,,,\n"u8.ToArray(),
        _ => CutAtLine(File.ReadAllBytes(TestFiles.Sample(name)), 3000),
    };

    private static string Rows(Func<int, string> values, string pattern = "uuuu-MM-dd HH:mm", char delimiter = ',')
    {
        var text = new StringBuilder();
        var at = new NodaTime.LocalDateTime(2024, 3, 30, 20, 0);
        for (var i = 0; i < 40; i++, at = at.PlusMinutes(30))
            if (at.Date.Day != 31 || at.Hour != 1) text.Append(at.ToString(pattern, CultureInfo.InvariantCulture)).Append(delimiter).Append(values(i)).Append('\n');
        return text.ToString();
    }

    private static byte[] CutAtLine(byte[] bytes, int about) =>
        bytes.Length <= about ? bytes : bytes[..(Array.IndexOf(bytes, (byte)'\n', about) + 1)];
}
