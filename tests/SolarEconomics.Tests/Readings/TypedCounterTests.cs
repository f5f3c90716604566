using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Counter readings as people type them: other marks, other orders of dates, another unit, a register that ran over between two readings.</summary>
public sealed class TypedCounterTests : IDisposable
{
    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    [Fact]
    public void Semicolons_decimal_commas_and_dates_with_dots_are_read()
    {
        var counter = Only(Read("Date;Device;kWh\n31.03.2023;south;4812,5\n30.04.2023;south;5.100,25\n"));
        Assert.Equal([(new LocalDate(2023, 3, 31), 4812.5), (new LocalDate(2023, 4, 30), 5100.25)], counter.Readings.Select(r => (r.Date, r.Kwh)));
    }

    [Fact]
    public void Month_first_is_told_by_a_day_above_twelve()
    {
        var counter = Only(Read("date,device,kwh\n01/05/2023,south,100\n01/31/2023,south,150\n"));
        Assert.Equal([new LocalDate(2023, 1, 5), new LocalDate(2023, 1, 31)], counter.Readings.Select(r => r.Date));
    }

    [Fact]
    public void An_order_of_dates_that_does_not_show_is_refused_with_both_readings()
    {
        var message = Assert.Throws<RecordException>(() => Read("date,device,kwh\n01/05/2023,south,100\n02/05/2023,south,150\n")).Message;
        Assert.StartsWith("counters.csv, line 2, column 1: found dates in which day and month could change places: \"01/05/2023\" is ", message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_unit_behind_the_number_is_taken()
    {
        var readings = Read("date,device,kwh\n2023-01-01,south,9800\n2023-06-01,south,11.2 MWh\n2023-07-01,south,11500000 Wh\n2023-08-01,south,3 kW\n");
        Assert.Equal([9800.0, 11200.0, 11500.0], Only(readings).Readings.Select(r => r.Kwh));
        var problem = Assert.Single(readings.Problems);
        Assert.Equal((5, Severity.Lost), (problem.Line, problem.Severity));
    }

    [Theory]
    [InlineData("9000,9600,10.2,10.8", "9000,9600,10200,10800")] // a display that changed to MWh
    [InlineData("9.0,9.6,10200,10800", "9000,9600,10200,10800")] // and one that changed back
    [InlineData("9000000,9600000,10200,10800", "9000,9600,10200,10800")] // from Wh
    public void A_counter_that_goes_on_in_another_unit_is_brought_to_kwh_and_said(string typed, string kwh)
    {
        var readings = Read(Quarterly(typed));
        Assert.Equal(kwh.Split(',').Select(v => double.Parse(v, System.Globalization.CultureInfo.InvariantCulture)), Only(readings).Readings.Select(r => Math.Round(r.Kwh, 6)));
        var problem = Assert.Single(readings.Problems);
        Assert.Equal((4, Severity.Doubtful), (problem.Line, problem.Severity));
        Assert.Contains("a thousand times", problem.Found, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("9000,9600,400,1000", 1600)] // by hand: a reset; 600, then 400, then 600
    [InlineData("99000,99600,100,700", 1700)] // five digits ran over: 600, then 400 + 100, then 600
    [InlineData("8200,9000,9500,150", 1950)] // four digits, from further away, at the pace before: 800, 500, then 500 + 150
    [InlineData("16000,16500,300,800", 1577.216)] // 24 bits of Wh, 16,777.216 kWh: 500, then 277.216 + 300, then 500
    [InlineData("1000,1040,3,43", 91.576)] // 20 bits of Wh, 1,048.576 kWh: 40, then 8.576 + 3, then 40
    public void A_step_back_is_a_reset_or_an_overrun_as_the_pace_before_bears_out(string typed, double counted)
    {
        var first = double.Parse(typed.Split(',')[0], System.Globalization.CultureInfo.InvariantCulture);
        var readings = Read(Quarterly(typed), new Device("south", MeasurementPoint.InverterAcOut) { OpeningKwh = first });
        Assert.Equal((counted, 1), (Math.Round(Only(readings).CountedKwh, 6), Only(readings).Resets));
        Assert.Equal(Severity.Doubtful, Assert.Single(readings.Problems).Severity);
    }

    [Fact]
    public void Where_reset_and_overrun_are_alike_the_lower_is_counted_and_the_other_said()
    {
        // By hand: 900 a quarter before; a reset adds 800, a register of 10,000 kWh that ran over 1,000.
        var readings = Read(Quarterly("8000,8900,9800,800"), new Device("south", MeasurementPoint.InverterAcOut) { OpeningKwh = 8000 });
        Assert.Equal(900 + 900 + 800, Only(readings).CountedKwh);
        Assert.EndsWith("a register of 10000 kWh that ran over would add 1000 kWh and be as likely", Assert.Single(readings.Problems).Expected, StringComparison.Ordinal);
    }

    private static string Quarterly(string typed) =>
        "date,device,kwh\n" + string.Concat(typed.Split(',').Zip(["2023-01-01", "2023-04-01", "2023-07-01", "2023-10-01"], (value, date) => $"{date},south,{value}\n"));

    private static Counter Only(Readings readings) => Assert.Single(readings.Counters);

    private Readings Read(string text, params Device[] devices) =>
        Readings.Load(_files.Write("counters.csv", text), Site.At("Test mill", 53, -9, "Europe/Dublin", "EUR") with { Plant = new Plant(devices) });
}
