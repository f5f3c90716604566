using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests;

public sealed class PublishedReadingsTests : IDisposable
{
    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    [Theory, PublishedRows("local-day-hours")]
    public void A_local_day_lasts_its_published_hours(string id) =>
        Published.Check(id, row => LocalDays.LengthOf(row.Dates("day")[0], Zones.Of(row.Text("zone"))).TotalHours);

    [Theory, PublishedRows("local-stamp-offsets")]
    public void A_local_stamp_has_its_published_offsets(string id) => Published.Check(id, row =>
    {
        StampText.TryRead(row.Text("stamp"), DateOrder.YearMonthDay, out var stamp);
        var clock = new StampClock(Zones.Of(row.Text("zone")), StampPolicy.ByRowOrder);
        clock.Resolve(stamp.LocalMs - 3_600_000, 1, out _);
        var fate = clock.Resolve(stamp.LocalMs, 2, out var first);
        if (fate == StampFate.Skipped) return "does not exist";
        clock.Resolve(stamp.LocalMs, 3, out var second);
        return string.Create(CultureInfo.InvariantCulture, $"first +{(stamp.LocalMs - first) / 3_600_000} second +{(stamp.LocalMs - second) / 3_600_000}");
    });

    [Theory, PublishedRows("quarter-hours-of-a-day")]
    public void A_day_of_quarter_hours_is_read_whole(string id) => Published.Check(id, row =>
    {
        // The wall clock of the day as a device writes it: skipped quarters left out, repeated ones twice.
        var zone = Zones.Of(row.Text("zone"));
        var day = row.Dates("day")[0];
        var text = new System.Text.StringBuilder("start,import (kWh)\n");
        for (var at = LocalDays.StartOf(day, zone); at < LocalDays.StartOf(day.PlusDays(1), zone); at += Duration.FromMinutes(15))
            text.Append(at.InZone(zone).ToString("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture)).Append(",1\n");
        var content = RecordReaders.Read(_files.Write("day.csv", text.ToString()), new ReadOptions { Zone = zone });
        return content.Channels.Single().Total.Kwh;
    });

    [Theory, PublishedRows("espi-kwh")]
    public void A_raw_value_scales_to_its_published_energy(string id) =>
        Published.Check(id, row => EspiCodes.Kilo(row.Number("value"), row.Whole("multiplier")));

    [Theory, PublishedRows("espi-cost")]
    public void A_raw_cost_scales_to_its_published_amount(string id) => Published.Check(id, row => EspiCodes.Money(row.Number("cost")));

    [Theory, PublishedRows("espi-direction")]
    public void A_direction_code_means_what_the_schema_says(string id) => Published.Check(id, row => EspiCodes.FlowOf(row.Text("code")) switch
    {
        FlowKind.Import => "import",
        FlowKind.Export => "export",
        _ => EspiCodes.DirectionName(row.Text("code")),
    });

    [Theory, PublishedRows("espi-code")]
    public void A_code_means_what_the_schema_says(string id) => Published.Check(id, row => row.Text("kind") switch
    {
        "quality" => EspiCodes.QualityWord(row.Text("code")),
        "accumulation" => EspiCodes.AccumulationWord(row.Text("code")),
        _ => EspiCodes.UnitOf(row.Text("code"))!.Name,
    });

    [Theory, PublishedRows("nem12-per-day")]
    public void A_day_holds_its_published_number_of_values(string id) =>
        Published.Check(id, row => (double)new Nem12Stream("N", "E1", "kWh", row.Whole("minutes")).PerDay);

    [Theory, PublishedRows("nem12-energy")]
    public void Streams_of_energy_add_up_to_the_published_total(string id) =>
        Published.Check(id, row => Streams(row).Where(c => c.IsEnergy).Sum(c => c.Total.Kwh));

    [Theory, PublishedRows("nem12-not-energy")]
    public void Reactive_streams_are_kept_apart(string id) =>
        Published.Check(id, row => Streams(row).Where(c => !c.IsEnergy).Sum(c => c.Total.Kwh));

    [Theory, PublishedRows("nem12-direction")]
    public void A_suffix_goes_the_published_way(string id) => Published.Check(id, row => Nem12Stream.FlowOf(row.Text("suffix"), EnergyUnit.Find(row.Text("unit"))) switch
    {
        FlowKind.Import => "grid to customer",
        FlowKind.Export => "customer to grid",
        _ => "never added to energy",
    });

    [Theory, PublishedRows("nem12-code")]
    public void A_record_and_a_quality_bear_their_published_names(string id) =>
        Published.Check(id, row => row.Has("record") ? Nem12Codes.RecordWord(row.Text("record")) : Nem12Codes.QualityWord(row.Text("quality")[0]));

    [Theory, PublishedRows("nem12-minutes-to-end")]
    public void An_interval_ends_its_published_minutes_after_midnight_at_utc_plus_10(string id) => Published.Check(id, row =>
    {
        var minutes = row.Whole("minutes");
        var channel = Nem12(FormattableString.Invariant($"E1:kWh:{minutes}:20240701:1:1")).Single();
        return (channel.Ends[row.Whole("k") - 1] - new LocalDateTime(2024, 7, 1, 0, 0).WithOffset(Offset.FromHours(10)).ToInstant()).TotalMinutes;
    });

    [Theory, PublishedRows("netting")]
    public void Netting_in_a_longer_interval_hides_export(string id) => Published.Check(id, row =>
    {
        var start = Instant.FromUtc(2024, 6, 1, 12, 0);
        Channel Quarters(FlowKind flow, params double[] kwh) => new(flow.ToString(), flow,
            [start, start + Duration.FromMinutes(15)], [start + Duration.FromMinutes(15), start + Duration.FromMinutes(30)], kwh, [Quality.Good, Quality.Good]);
        var step = Duration.FromMinutes(row.Whole("minutes"));
        // 4 kW in the first quarter; 2 kW throughout.
        var netting = Netting.Of(Quarters(FlowKind.Generation, 1, 0).InStepsOf(step), Quarters(FlowKind.Use, 0.5, 0.5).InStepsOf(step));
        return row.Text("result") switch
        {
            "self-use" => netting.SelfUseKwh,
            "import" => netting.ImportKwh,
            "export" => netting.ExportKwh,
            _ => (netting.SelfUseKwh * 0.30) + (netting.ExportKwh * 0.08),
        };
    });

    private IReadOnlyList<Channel> Streams(PublishedRow row) => Nem12(row.Words("streams"));

    /// <summary>A NEM12 file of streams written as suffix:unit:minutes:first day:days:value of every interval.</summary>
    private IReadOnlyList<Channel> Nem12(params string[] streams)
    {
        var text = new System.Text.StringBuilder("100,NEM12,200405011135,MDA1,Ret1\n");
        foreach (var parts in streams.Select(s => s.Split(':')))
        {
            var minutes = int.Parse(parts[2], CultureInfo.InvariantCulture);
            text.Append(CultureInfo.InvariantCulture, $"200,VABD000163,E1Q1,1,{parts[0]},N1,METSER123,{parts[1]},{minutes},\n");
            var day = NodaTime.Text.LocalDatePattern.CreateWithInvariantCulture("uuuuMMdd").Parse(parts[3]).Value;
            for (var d = 0; d < int.Parse(parts[4], CultureInfo.InvariantCulture); d++)
                text.Append(CultureInfo.InvariantCulture, $"300,{day.PlusDays(d):uuuuMMdd},{string.Join(',', Enumerable.Repeat(parts[5], 1440 / minutes))},A,,,20040202120025,20040202142516\n");
        }
        return RecordReaders.Read(_files.Write("streams.csv", text.Append("900\n").ToString()), new ReadOptions()).Channels;
    }
}
