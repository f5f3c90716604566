using NodaTime;

namespace SolarEconomics.Tests;

public sealed class CounterCsvTests : IDisposable
{
    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    private Readings Read(string text, params Device[] devices) =>
        Readings.Load(_files.Write("counters.csv", text), Site.At("Test mill", 53, -9, "Europe/Dublin", "EUR") with { Plant = new Plant(devices) });

    [Fact]
    public void Each_device_becomes_a_counter_with_point_and_opening_value_of_the_plant()
    {
        var readings = Read("# Invented data for a test\ndate,device,kwh,days uncertain,photo,note\n2023-01-01,barn,4812,0,,\n2023-02-01,barn,4900.5,3,p1.jpg,\"dim, hard to read\"\n2023-01-15,south,10,,,\n",
            new Device("barn", MeasurementPoint.ControllerDcOut) { OpeningKwh = 4812 }, new Device("south", MeasurementPoint.InverterAcOut));
        Assert.Equal(["barn", "south"], readings.Counters.Select(c => c.Device));
        var barn = readings.Counters[0];
        Assert.Equal((MeasurementPoint.ControllerDcOut, 4812.0, 88.5, 4900.5), (barn.Point, barn.OpeningKwh, barn.CountedKwh, barn.LastKwh));
        Assert.Equal(new CounterReading(new LocalDate(2023, 2, 1), 4900.5, 3, "p1.jpg", "dim, hard to read", 4), barn.Readings[1]);
        Assert.Empty(readings.Problems);
    }

    [Fact]
    public void A_reset_adds_what_stood_before_and_is_reported_once()
    {
        var readings = Read("date,device,kwh\n2023-01-01,south,100\n2023-02-01,south,250\n2023-03-01,south,40\n", new Device("south", MeasurementPoint.InverterAcOut));
        // By hand: 250 up to the reset, 40 after it.
        Assert.Equal(290, readings.Counters[0].CountedKwh);
        Assert.Equal(1, readings.Counters[0].Resets);
        Assert.Equal((4, Severity.Doubtful), (Assert.Single(readings.Problems).Line, readings.Problems[0].Severity));
    }

    [Fact]
    public void A_register_that_ran_over_adds_the_way_over_its_top()
    {
        var readings = Read("date,device,kwh\n2023-01-01,south,99000\n2023-02-01,south,99900\n2023-03-01,south,150\n", new Device("south", MeasurementPoint.InverterAcOut) { OpeningKwh = 99000 });
        // By hand: 900, then 100 to the top of five digits and 150 beyond.
        Assert.Equal(1150, readings.Counters[0].CountedKwh);
        Assert.Contains("100000 kWh that ran over", Assert.Single(readings.Problems).Expected);
    }

    [Fact]
    public void A_broken_row_is_reported_and_the_others_are_read()
    {
        var readings = Read("date,device,kwh\n2023-01-01,south,ten\n2023-02-31,south,20\n2023-03-01,,30\n2023-04-01,south,40\n", new Device("south", MeasurementPoint.InverterAcOut));
        Assert.Equal([2, 3, 4], readings.Problems.Select(p => p.Line));
        Assert.All(readings.Problems, p => Assert.Equal(Severity.Lost, p.Severity));
        Assert.Equal(40, readings.Counters[0].LastKwh);
    }

    [Fact]
    public void Rows_out_of_order_are_put_in_order_of_date()
    {
        var readings = Read("date,device,kwh\n2023-03-01,south,30\n2023-01-01,south,10\n2023-02-01,south,20\n", new Device("south", MeasurementPoint.InverterAcOut));
        Assert.Equal([10.0, 20.0, 30.0], readings.Counters[0].Readings.Select(r => r.Kwh));
        Assert.Equal(30, readings.Counters[0].CountedKwh);
    }
}
