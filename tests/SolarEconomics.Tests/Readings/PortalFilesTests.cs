using System.Globalization;
using System.Text;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Exports of portals and meters in several languages, invented; totals worked by hand.</summary>
public sealed class PortalFilesTests : IDisposable
{
    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    private static string Hour(int hour) => hour.ToString("00", CultureInfo.InvariantCulture);

    private InspectedFile Look(string text, Encoding? encoding = null, ReadOptions? options = null) =>
        Assert.Single(Inspection.Of([_files.Write("table.csv", text, encoding)], "Europe/Lisbon", options).Files);

    [Fact]
    public void Lines_of_a_name_and_a_value_above_the_header_are_no_header()
    {
        var file = Look("Identifiant;09111111111111\nType;Courbe de charge\nUnité;W\nHorodate;Puissance soutirée (W)\n"
            + string.Concat(Enumerable.Range(0, 48).Select(i => $"13/01/2024 {Hour(i / 2)}:{i % 2 * 30:00};500\n")));
        // By hand: a day of 500 W.
        Assert.Equal([("Puissance soutirée", FlowKind.Import, 12.0)], file.Channels.Select(c => (c.Name, c.Flow, c.TotalKwh!.Value)));
    }

    [Fact]
    public void Headers_over_two_rows_that_both_name_the_time_are_joined()
    {
        var file = Look("Date,Grid,Roof\nTime,import (kWh),generation (kWh)\n" + string.Concat(Enumerable.Range(0, 24).Select(h => $"2024-05-01 {Hour(h)}:00,1,2\n")));
        Assert.Equal([("Grid import", 24.0), ("Roof generation", 48.0)], file.Channels.Select(c => (c.Name, c.TotalKwh!.Value)));
    }

    [Theory]
    [InlineData("Prelievo (kWh)", FlowKind.Import)]
    [InlineData("Immissione (kWh)", FlowKind.Export)]
    [InlineData("Produzione (kWh)", FlowKind.Generation)]
    [InlineData("Consumo_kWh", FlowKind.Use)]
    [InlineData("Excedente_kWh", FlowKind.Export)]
    [InlineData("Injeção na rede (kW)", FlowKind.Export)]
    [InlineData("Stand teruglevering laag (kWh)", FlowKind.Export)]
    [InlineData("Pobór (kWh)", FlowKind.Import)]
    [InlineData("Förbrukning (kWh)", FlowKind.Use)]
    [InlineData("売電量(kWh)", FlowKind.Export)]
    [InlineData("買電量(kWh)", FlowKind.Import)]
    [InlineData("Courbe de charge (W)", FlowKind.Use)]
    [InlineData("Autoconsumo (kWh)", FlowKind.Unknown)]
    public void Words_of_other_languages_name_their_flow(string header, FlowKind flow) =>
        Assert.Equal(flow, HeaderWords.Understand(header, 2, null, null).Flow);

    [Theory, InlineData("Standing Charge"), InlineData("Supply charge (p)"), InlineData("Prezzo"), InlineData("Température")]
    public void What_is_paid_or_measured_besides_is_left_out(string header) =>
        Assert.Equal(ColumnKind.Ignored, HeaderWords.Understand(header, 2, null, null).Kind);

    [Theory, InlineData("power_w", "W"), InlineData("PV Leistung W", "W"), InlineData("roof_w", ""), InlineData("power_kw", "kW")]
    public void A_lone_w_is_the_unit_beside_a_word_for_power(string header, string unit) =>
        Assert.Equal(unit, HeaderWords.Understand(header, 2, null, null).Unit);

    private static string Quarters(string first, string end = "24:00") => "Data;Hora;Consumo (kWh)\n" + (first.Length > 0 ? $"2024/07/01;{first};1\n" : "")
        + string.Concat(Enumerable.Range(1, 96).Select(i => $"2024/07/01;{(i == 96 ? end : $"{Hour(i / 4)}:{i % 4 * 15:00}")};0,25\n"));

    [Fact]
    public void A_day_that_ends_at_24_00_is_stamped_at_ends_and_the_file_says_so()
    {
        var file = Look(Quarters(""));
        // By hand: Lisbon is an hour ahead of UTC in July.
        Assert.Equal((Instant.FromUtc(2024, 6, 30, 23, 0), Instant.FromUtc(2024, 7, 1, 23, 0), 24.0, 1),
            (file.Channels[0].Start!.Value, file.Channels[0].End!.Value, file.Channels[0].TotalKwh!.Value, file.LocalDays));
        Assert.Contains("the time 24:00 and no 00:00", Assert.Single(file.Problems).Found);
    }

    [Fact]
    public void A_day_with_both_midnights_or_a_user_who_says_so_keeps_starts()
    {
        Assert.Equal(Instant.FromUtc(2024, 6, 30, 23, 0), Look(Quarters("00:00")).Channels[0].Start);
        var told = Look(Quarters(""), options: new ReadOptions { StampEdge = StampEdge.Start });
        Assert.Equal((Instant.FromUtc(2024, 6, 30, 23, 15), 0), (told.Channels[0].Start, told.Problems.Count));
    }

    private static readonly string Hybrid = "Time,PV(W),Grid(W)\n" + string.Concat(Enumerable.Range(0, 24).Select(h => $"2024-07-01 {Hour(h)}:00,100,{(h < 18 ? 200 : -300)}\n"));

    [Fact]
    public void Power_of_both_directions_that_names_no_flow_is_asked_about()
    {
        var problem = Assert.Single(Look(Hybrid).Problems, p => p.Severity == Severity.Doubtful);
        // By hand: 18 hours of 200 W, 6 of -300 W.
        Assert.Equal("3.6 kWh above zero and -1.8 kWh below under \"Grid\", which names no flow", problem.Found);
        Assert.Contains("ColumnMeaning.Of(\"Grid(W)\", FlowKind.Import, \"W\", ColumnKind.Net)", problem.Expected);
    }

    [Theory]
    [InlineData(FlowKind.Import, FlowKind.Export)]
    [InlineData(FlowKind.Export, FlowKind.Import)]
    [InlineData(FlowKind.BatteryCharge, FlowKind.BatteryDischarge)]
    [InlineData(FlowKind.BatteryDischarge, FlowKind.BatteryCharge)]
    public void Power_of_both_directions_is_parted_the_way_the_user_says(FlowKind above, FlowKind below)
    {
        var file = Look(Hybrid, options: new ReadOptions { Columns = [ColumnMeaning.Of("Grid(W)", above, "W", ColumnKind.Net)] });
        Assert.Equal([(above, 3.6), (below, 1.8)], file.Channels.Skip(1).Select(c => (c.Flow, Math.Round(c.TotalKwh!.Value, 9))));
        Assert.Equal(0, file.ExitCode);
    }
}
