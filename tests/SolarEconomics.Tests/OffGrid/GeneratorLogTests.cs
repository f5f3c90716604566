using System.Globalization;
using NodaTime;
using SolarEconomics.Tests.Demo;

namespace SolarEconomics.Tests;

/// <summary>By hand and against the demo's hidden truth; the fuel line itself is held by its published row.</summary>
public class GeneratorLogTests
{
    private static readonly Generator s_generator = new(5, new FuelLine(0.09, 0.25));
    private static readonly Currency s_eur = Currency.Of("EUR");

    [Fact]
    public void Fuel_and_hours_give_the_energy_as_a_range()
    {
        // By hand: 100 h idle at 0.45 L/h = 45 L; 120 L lie 10 % off the line: 120/1.1 = 109.09 and 120/0.9 = 133.33, less 45, over 0.25: 256.4 to 353.3 kWh.
        var energy = Log("2024-01-01,1000,0,,,,,", "2024-02-01,1100,120,1.50,yes,31,1.5,10").Energy(s_generator, s_eur);
        Assert.Equal(256.3636, energy.Kwh.LowKwh, 4);
        Assert.Equal(353.3333, energy.Kwh.HighKwh, 4);
        Assert.Equal(Money.Nominal(195, s_eur), energy.FuelAndOil);
        Assert.Equal(195 / 353.3333, (double)energy.LowPricePerKwh!.Value.Amount, 6);
        Assert.Equal(195 / 256.3636, (double)energy.HighPricePerKwh!.Value.Amount, 6);
        Assert.Equal((100, 31), (energy.Hours, energy.Starts));
    }

    [Fact]
    public void A_tank_that_was_not_filled_widens_the_range_to_its_side_alone()
    {
        var full = Log("2024-01-01,0,0", "2024-02-01,100,120").Energy(s_generator, s_eur, 0);
        var last = Log("2024-01-01,0,0,,yes", "2024-02-01,100,120,,no").Energy(s_generator, s_eur, 0, tankLitres: 20);
        var first = Log("2024-01-01,0,0,,no", "2024-02-01,100,120,,yes").Energy(s_generator, s_eur, 0, tankLitres: 20);
        void Is(double low, double high, EnergyRange kwh)
        {
            Assert.Equal(low, kwh.LowKwh, 9);
            Assert.Equal(high, kwh.HighKwh, 9);
        }
        Is(300, 300, full.Kwh);
        Is(300, 380, last.Kwh);
        Is(220, 300, first.Kwh);
    }

    [Fact]
    public void No_more_than_full_power_is_ever_given() =>
        Assert.Equal(50, Log("2024-01-01,0,0", "2024-01-02,10,17.5").Energy(s_generator, s_eur).Kwh.HighKwh);

    [Fact]
    public void Fuel_that_the_hours_cannot_have_burned_is_refused_with_what_they_can()
    {
        var error = Assert.Throws<RecordException>(() => Log("2024-01-01,0,0", "2024-02-01,10,200").Energy(s_generator, s_eur));
        Assert.Equal("Found 200 litres burned in 10 hours, expected 4.1 to 18.7 for a generator of this rating and fuel line. " +
            "Check the rated power, the fuel line, and whether a filling or some hours are missing from the log.", error.Message);
    }

    [Fact]
    public void The_energy_says_itself_with_its_doubt_and_the_cautions()
    {
        var said = Log("2024-01-01,1000,0,,,,,", "2024-02-01,1100,120,,yes,31,,").Energy(s_generator, s_eur).Say(CultureInfo.InvariantCulture);
        Assert.Equal("256 to 353 kWh", said.Figure);
        Assert.Equal("is what the generator gave in 100 hours with 120 litres, 1 Jan 2024 to 31 Jan 2024. What a kWh of it cost cannot be told.", said.Words);
        Assert.Contains("120 litres have no price: the cost is at least this.", said.Notes);
        Assert.Contains(said.Cautions, c => c.Contains("exhaust kills", StringComparison.Ordinal));
    }

    [Fact]
    public void Rows_that_cannot_be_read_are_all_named()
    {
        var error = Assert.Throws<RecordException>(() => Log("2024-13-01,10,5", "2024-02-01,,5", "2024-03-01,30,-1,,perhaps"));
        Assert.Equal(4, error.Problems.Count);
        Assert.Contains("log.csv, line 3, column 1: found \"2024-13-01\" as date, expected a date such as 2024-03-31", error.Message, StringComparison.Ordinal);
        Assert.Contains("line 4, column 2: found nothing as hours, expected a number (hours on the meter)", error.Message, StringComparison.Ordinal);
        Assert.Contains("line 5, column 3: found \"-1\" as litres, expected a number from 0 to 100000", error.Message, StringComparison.Ordinal);
        Assert.Contains("line 5, column 5: found \"perhaps\" as full, expected one of", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_log_that_is_none_is_refused_in_words()
    {
        Assert.Contains("found no such file, expected a generator log", Assert.Throws<RecordException>(() => GeneratorLog.Load("none.csv")).Message, StringComparison.Ordinal);
        Assert.Contains("found no rows", Assert.Throws<RecordException>(() => GeneratorLog.Read(new StringReader(""), "log.csv")).Message, StringComparison.Ordinal);
        Assert.Contains("found no column \"hours\"", Assert.Throws<RecordException>(() => GeneratorLog.Read(new StringReader("date,litres\n2024-01-01,1\n"), "log.csv")).Message, StringComparison.Ordinal);
        Assert.Contains("Found 1 rows that count", Assert.Throws<RecordException>(() => Log("2024-01-01,0,0")).Message, StringComparison.Ordinal);
        Assert.Contains("found an hour meter of 5 h after 10 h", Assert.Throws<RecordException>(() => Log("2024-01-01,10,0", "2024-02-01,5,0")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_refuge_s_true_energy_lies_inside_what_its_log_tells()
    {
        var log = GeneratorLog.Load(Path.Combine(DemoScenario.Folder, "refuge-generator.csv"));
        var energy = log.Energy(new Generator(4.5, new FuelLine(0.09, 0.25)), s_eur);
        var truth = DemoScenario.Result.Refuge.GeneratorWh.Sum() / 1000.0;
        Assert.True(energy.Kwh.Contains(truth), $"{truth} outside {energy.Kwh}");
        Assert.InRange(energy.Kwh.WidthKwh / truth, 0.1, 0.5);
        Assert.Equal(DemoScenario.Result.Refuge.Starts.Count(s => s), energy.Starts);
        Assert.Equal(DemoScenario.Result.Refuge.GeneratorWh.Count(wh => wh > 0) / 2.0, energy.Hours);
        Assert.Equal(new LocalDate(2022, 3, 1), energy.Period.Start);
    }

    private static GeneratorLog Log(params string[] rows) =>
        GeneratorLog.Read(new StringReader("# a remark\ndate,hours,litres,price per litre,full,starts,oil litres,oil price per litre\n" + string.Join('\n', rows) + "\n"), "log.csv");
}
