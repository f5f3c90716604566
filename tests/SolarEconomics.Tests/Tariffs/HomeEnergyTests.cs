using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>A home's energy with and without plant and battery, in one expression each. By hand, by the value to date, and by balances on random homes.</summary>
public sealed class HomeEnergyTests
{
    private static readonly Site Place = Site.At("Invented", 53, -9, "Europe/Dublin", "EUR");
    private static readonly TariffHistory Flat = TariffHistory.Of(Tariff.Flat("Flat", "EUR", importPerKwh: 0.30m, supplyPerDay: 0.50m, exportPerKwh: 0.10m, from: new LocalDate(2024, 1, 1)));

    [Fact]
    public void Bills_with_and_without_plant_and_battery_by_hand()
    {
        // One day of January: 24 kWh of use, 10 kWh made from 10 to 14, so 4 used directly and 6 into the battery, which gives 6 from 18 on.
        // As it is: 14 kWh taken, nothing sent. Without battery: 20 taken, 6 sent. Without plant: 24 taken.
        var home = HomeEnergy.Of(Place, Day(battery: true), Flat);
        var bills = BillWithAndWithout.Of(home);
        Assert.Equal((0.5m + 4.2m, 0.5m + 6m - 0.6m, 0.5m + 7.2m), (Total(bills.Actual), Total(bills.WithoutBattery), Total(bills.WithoutSolar)));
        Assert.Equal((3m, 1.2m), (bills.SavedByAll.Amount, bills.SavedByBattery.Amount));
    }

    [Fact]
    public void A_battery_that_the_home_does_not_have_is_worked_out_by_the_flow_model()
    {
        // 4 kWh that lose nothing: 4 of the 6 kWh of surplus are stored and used, 16 taken, 2 sent.
        var bills = BillWithAndWithout.Of(HomeEnergy.Of(Place, Day(battery: false), Flat), Battery.Of(4, 1));
        Assert.Equal((0.5m + 6m - 0.6m, 0.5m + 4.8m - 0.2m), (Total(bills.Actual), Total(bills.WithProposed!)));
        Assert.Equal(0.8m, bills.SavedByProposed!.Value.Amount);
        Assert.Equal(0, bills.SavedByBattery.Amount);
        Assert.Contains("€0.80 less with a battery of 4 kWh", bills.Say(System.Globalization.CultureInfo.InvariantCulture).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void The_marginal_table_and_the_comparison_take_readings_in_one_expression()
    {
        var readings = Day(battery: false);
        Assert.Equal(0.10, Cell(MarginalTable.Of(Place, readings, Flat), 11).Generated, 7);
        Assert.Equal(0.30, Cell(MarginalTable.Of(HomeEnergy.Of(Place, readings, Flat).WithoutPlant()), 11).Generated, 7);
        // All surplus stored, and room left: a further kWh at noon is one less taken at night, and a kWh more used then is one more taken.
        var stored = MarginalTable.Of(HomeEnergy.Of(Place, readings, Flat).With(Battery.Of(20, 1)));
        Assert.Equal((0.30, 0.30), (Math.Round(Cell(stored, 11).Generated, 7), Math.Round(Cell(stored, 11).Used, 7)));
        // 6 kWh fill the store to the edge: one more at noon is sent, one less there is one more taken.
        var full = MarginalTable.Of(HomeEnergy.Of(Place, readings, Flat).With(Battery.Of(6, 1)));
        Assert.Equal((0.10, 0.30), (Math.Round(Cell(full, 13).Generated, 7), Math.Round(Cell(full, 13).Used, 7)));
        var choices = new[] { new TariffChoice("flat", Flat), new TariffChoice("dear", TariffHistory.Of(Tariff.Flat("Dear", "EUR", 0.40m))) };
        Assert.Equal(20 * 0.40m, SeriesComparison.Of(choices, HomeEnergy.Of(Place, readings, Flat)).Answer().Ranks.Single(r => r.Name == "dear").Total.Amount);
        Assert.Equal(14 * 0.40m, SeriesComparison.Of(choices, HomeEnergy.Of(Place, readings, Flat).With(Battery.Of(20, 1))).Answer().Ranks.Single(r => r.Name == "dear").Total.Amount);
    }

    [Fact]
    public void Without_generation_on_record_the_plant_cannot_be_asked_away()
    {
        var home = HomeEnergy.Of(Place, Of(("import", FlowKind.Import, _ => 1.0)), Flat);
        Assert.Contains("found no readings of generation", Assert.Throws<RecordException>(home.WithoutPlant).Message, StringComparison.Ordinal);
        Assert.Throws<RecordException>(home.WithoutBattery);
        Assert.Throws<RecordException>(() => HomeEnergy.Of(Place, Of(("roof", FlowKind.Generation, _ => 1.0)), Flat));
    }

    [Fact]
    public void The_saving_is_the_value_to_date() => Gen.Double[0, 2].Array[24 * 40].Select(Gen.Double[0, 2].Array[24 * 40]).Sample((use, made) =>
    {
        var readings = Of(("import", FlowKind.Import, i => Math.Max(0, use[i] - made[i])), ("export", FlowKind.Export, i => Math.Max(0, made[i] - use[i])), ("roof", FlowKind.Generation, i => made[i]));
        var bills = BillWithAndWithout.Of(HomeEnergy.Of(Place, readings, Flat));
        Assert.Equal(Worth.ToDate(Place, readings, Flat).Value, bills.SavedByAll);
    }, iter: 20);

    [Fact]
    public void With_another_battery_use_and_generation_stay_and_nothing_comes_from_nowhere() => Gen.Double[0, 2].Array[24 * 10].Select(Gen.Double[0, 2].Array[24 * 10], Gen.Double[0, 20]).Sample((use, made, kwh) =>
    {
        var readings = Of(("import", FlowKind.Import, i => Math.Max(0, use[i] - made[i])), ("export", FlowKind.Export, i => Math.Max(0, made[i] - use[i])), ("roof", FlowKind.Generation, i => made[i]));
        var home = HomeEnergy.Of(Place, readings, Flat);
        var (without, with) = (home.WithoutBattery().Energy, home.With(Battery.Of(kwh, 0.9)).Energy);
        Assert.Equal(home.Energy.ImportKwh.Sum(), without.ImportKwh.Sum(), 5e-7);
        Assert.Equal(home.Energy.UseKwh.Sum(), with.UseKwh.Sum(), 5e-7);
        Assert.True(with.ImportKwh.Sum() <= without.ImportKwh.Sum() + 1e-9 && with.ExportKwh.Sum() <= without.ExportKwh.Sum() + 1e-9);
        // What is no longer sent covers at least what is no longer taken.
        Assert.True(without.ExportKwh.Sum() - with.ExportKwh.Sum() >= without.ImportKwh.Sum() - with.ImportKwh.Sum() - 1e-9);
    }, iter: 40);

    private static MarginalCell Cell(MarginalTable table, int hour) => table.Cells.Single(c => c.Hour == hour);

    private static decimal Total(IReadOnlyList<Bill> bills) => bills.Sum(b => b.Total.Amount);

    /// <summary>1 kWh used in each hour; 2.5 made from 10 to 14.</summary>
    private static Readings Day(bool battery)
    {
        double Made(int h) => h is >= 10 and < 14 ? 2.5 : 0;
        double Charge(int h) => battery ? Math.Max(0, Made(h) - 1) : 0;
        double Discharge(int h) => battery && h >= 18 ? 1 : 0;
        double Net(int h) => 1 + Charge(h) - Made(h) - Discharge(h);
        var flows = new List<(string, FlowKind, Func<int, double>)>
        {
            ("import", FlowKind.Import, h => Math.Max(0, Net(h))), ("export", FlowKind.Export, h => Math.Max(0, -Net(h))), ("roof", FlowKind.Generation, Made),
        };
        if (battery) flows.AddRange([("charge", FlowKind.BatteryCharge, Charge), ("discharge", FlowKind.BatteryDischarge, Discharge)]);
        return Of([.. flows], 24);
    }

    private static Readings Of(params (string Name, FlowKind Flow, Func<int, double> Kwh)[] flows) => Of(flows, 24 * 10);

    private static Readings Of((string Name, FlowKind Flow, Func<int, double> Kwh)[] flows, int hours)
    {
        Instant[] starts = [.. Enumerable.Range(0, hours).Select(h => Instant.FromUtc(2024, 1, 5, 0, 0) + Duration.FromHours(h))];
        Instant[] ends = [.. starts.Select(s => s + Duration.FromHours(1))];
        return new Readings([.. flows.Select(f => new Channel(f.Name, f.Flow, starts, ends, [.. Enumerable.Range(0, hours).Select(f.Kwh)], new Quality[hours]))], [], []);
    }
}
