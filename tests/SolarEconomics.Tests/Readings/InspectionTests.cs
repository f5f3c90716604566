using System.Globalization;
using System.Text.Json;

namespace SolarEconomics.Tests;

public sealed class InspectionTests : IDisposable
{
    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    private static JsonElement Json(Inspection inspection) => JsonDocument.Parse(inspection.ToJson()).RootElement.GetProperty("files")[0];

    [Fact]
    public void The_solar_month_is_inspected_on_the_clock_of_its_format()
    {
        var inspection = Inspection.Of([TestFiles.Sample("nem12-5min-solar-month.csv")]);
        var file = Json(inspection);
        Assert.Equal(["file", "format", "channels", "localDays", "shortDays", "longDays", "problems"], file.EnumerateObject().Select(p => p.Name));
        Assert.Equal(31, file.GetProperty("localDays").GetInt32());
        var import = file.GetProperty("channels").EnumerateArray().Single(c => c.GetProperty("name").GetString() == "E1");
        Assert.Equal("""{"name":"E1","flow":"import","unit":"kWh","readings":8928,"start":"2023-02-28T14:00:00Z","end":"2023-03-31T14:00:00Z","totalKwh":270.738000,"missing":0,"estimated":0,"repeated":0,"negative":0,"resets":0}""",
            JsonSerializer.Serialize(import));
        Assert.Equal(0, inspection.ExitCode);
    }

    [Fact]
    public void The_solar_month_touches_one_day_more_on_the_wall_clock_of_sydney() =>
        Assert.Equal(32, Inspection.Of([TestFiles.Sample("nem12-5min-solar-month.csv")], "Australia/Sydney").Files[0].LocalDays);

    [Fact]
    public void The_hourly_feed_has_one_short_day_by_its_own_parameters()
    {
        var inspection = Inspection.Of([TestFiles.Sample("espi-hourly-march-2011.xml")]);
        var file = Json(inspection);
        Assert.Equal((31, "2011-03-13"), (file.GetProperty("localDays").GetInt32(), file.GetProperty("shortDays")[0].GetString()));
        Assert.Equal((1, 0), (file.GetProperty("shortDays").GetArrayLength(), file.GetProperty("longDays").GetArrayLength()));
        Assert.Equal("2278.213000", file.GetProperty("channels")[0].GetProperty("totalKwh").GetRawText());
        Assert.Equal(0, inspection.ExitCode);
    }

    [Fact]
    public void A_table_with_bare_local_stamps_needs_a_zone()
    {
        var path = _files.Write("meter.csv", "start,import (kWh)\n2024-06-01 00:00,1\n2024-06-01 00:30,1\n");
        var inspection = Inspection.Of([path]);
        Assert.Equal(2, inspection.ExitCode);
        var file = Json(inspection);
        Assert.Equal(0, file.GetProperty("channels").GetArrayLength());
        Assert.Contains("--zone", file.GetProperty("problems")[0].GetProperty("expected").GetString());
        Assert.Equal(0, Inspection.Of([path], "Europe/Dublin").ExitCode);
    }

    [Fact]
    public void Stamps_with_offsets_need_no_zone()
    {
        var path = _files.Write("meter.csv", "start,import (kWh)\n2024-06-01T00:00+02:00,1\n2024-06-01T00:30+02:00,1\n");
        var file = Inspection.Of([path]).Files[0];
        Assert.Equal((0, 1), (file.ExitCode, file.LocalDays));
        Assert.Equal(NodaTime.Instant.FromUtc(2024, 5, 31, 22, 0), file.Channels[0].Start);
    }

    [Fact]
    public void A_lost_value_makes_it_exit_1_and_the_worst_file_decides()
    {
        var lost = _files.Write("a.csv", "start,import (kWh)\n2024-06-01 00:00,1\n2024-06-01 00:30,x\n2024-06-01 01:00,1\n");
        Assert.Equal(1, Inspection.Of([lost], "UTC").ExitCode);
        var both = Inspection.Of([lost, "no-such-file.csv"], "UTC");
        Assert.Equal((2, 2), (both.ExitCode, both.Files.Count));
        Assert.Equal("a.csv", Path.GetFileName(both.Files[0].File));
    }

    [Fact]
    public void An_unknown_zone_is_said_with_the_nearest_names()
    {
        var inspection = Inspection.Of([TestFiles.Sample("nem12-5min-solar-month.csv")], "Europe/Dubln");
        Assert.Equal(2, inspection.ExitCode);
        Assert.Contains("Europe/Dublin", inspection.ToText(CultureInfo.InvariantCulture));
    }

    [Fact]
    public void Reactive_energy_has_no_total()
    {
        var path = _files.Write("q.csv", "100,NEM12,200405011135,MDA1,Ret1\n200,VABD000163,Q1,1,Q1,N1,M1,kVArh,30,\n300,20040201," + string.Join(',', Enumerable.Repeat("2", 48)) + ",A,,,20040202120025,20040202142516\n900\n");
        Assert.Equal(JsonValueKind.Null, Json(Inspection.Of([path])).GetProperty("channels")[0].GetProperty("totalKwh").ValueKind);
    }

    [Theory]
    [InlineData("start,import (kWh)\n2024-06-01 00:00,1\n2024-06-01 00:30,1\n", null, 2, 1, "2024-06-01 00:00", "the time \"2024-06-01 00:00\" without an offset")]
    [InlineData("start;import (kWh)\n2024-06-01 00:00;1.234\n2024-06-01 00:30;5.678\n", "UTC", 2, 2, "1.234", "\"1.234\", which is 1234 if")]
    [InlineData("start;import (kWh)\n2024-06-01 00:00;1,5\n2024-06-01 00:30;2.5\n", "UTC", 2, 2, "1,5", "\"1,5\" with a decimal comma beside \"2.5\" with a decimal point")]
    [InlineData("import (kWh),day\n1,05/05/2024\n1,06/05/2024\n", "UTC", 3, 2, "06/05/2024", "dates in which day and month could change places")]
    [InlineData("day,import (kWh)\n45413,1\n45414,1\n", "UTC", 2, 1, "45413", "\"45413\" where the time stands, a bare number")]
    [InlineData("only words here\n", "UTC", 1, 0, "only words here", "no line with a time and a number")]
    public void A_refused_file_says_where_and_what_in_the_fields_of_its_problem(string text, string? zone, int line, int column, string raw, string found)
    {
        var path = _files.Write("meter.csv", text);
        var problem = Json(Inspection.Of([path], zone)).GetProperty("problems")[0];
        Assert.Equal((line, column, raw), (problem.GetProperty("line").GetInt32(), problem.GetProperty("column").GetInt32(), problem.GetProperty("raw").GetString()));
        Assert.StartsWith(found, problem.GetProperty("found").GetString(), StringComparison.Ordinal);
        Assert.NotEqual("", problem.GetProperty("expected").GetString());
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void Json_is_the_same_under_every_culture(string name)
    {
        var path = TestFiles.Sample("nem12-30min-quality-and-500.csv");
        var expected = Inspection.Of([path]).ToJson();
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(name);
            Assert.Equal(expected, Inspection.Of([path]).ToJson());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
