using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests.GenerationRoom;

/// <summary>A made-up year behind a hill in the west: where the hill is known, the envelope must find its hours and no others.</summary>
public sealed class ShadeEnvelopeTests
{
    private static readonly Site Place = Site.At("Test", 53.2, -9.1, "Europe/Dublin", "EUR");
    private static readonly Horizon Hill = Horizon.Of((0, 0), (215, 0), (220, 28), (300, 28), (305, 0));

    private static ShadeEnvelope Of(Horizon horizon)
    {
        var face = new Face("roof", new Plane(35, 180)) { Horizon = horizon };
        var array = new ModuleArray("a", new ModuleType("m", 400), 10, 1, face);
        var inverter = new InverterType("i", 5000);
        var grid = new IntervalGrid(Instant.FromUtc(2023, 1, 1, 0, 0), Duration.FromMinutes(30), 17520);
        var acW = new GenerationModel(inverter, array).Run(Place, GenerationModelTests.MadeUp(grid, seed: 11, split: true)).AcW;
        var (starts, ends, kwh) = (new Instant[grid.Count], new Instant[grid.Count], new double[grid.Count]);
        for (var i = 0; i < grid.Count; i++) (starts[i], ends[i], kwh[i]) = (grid.StartOf(i), grid.StartOf(i + 1), acW[i] * 0.9 / 2000);
        var plant = new Plant([new Device("roof", MeasurementPoint.InverterAcOut) { Inverter = inverter, InService = new(2023, 1, 1) }]).With(new Placement(array, "roof") { From = new(2023, 1, 1) });
        return ShadeEnvelope.Of(Place with { Plant = plant }, new Readings([new Channel("generation roof", FlowKind.Generation, starts, ends, kwh, new Quality[grid.Count]) { Device = "roof" }], [], []), "roof");
    }

    [Fact]
    public void A_hill_shades_the_hours_in_which_the_sun_stands_behind_it_and_no_others()
    {
        var envelope = Of(Hill);
        Assert.NotEmpty(envelope.Shaded);
        Assert.All(envelope.Shaded, cell => Assert.True(Behind(cell.Month, cell.Hour), FormattableString.Invariant($"{cell.Month}/{cell.Hour:00} at {cell.Share:0.00}")));
        Assert.True(envelope.Share(12, 15) is null or < ShadeEnvelope.ShadedBelow);
        Assert.True(envelope.Share(6, 13) > 0.85);
        Assert.True(envelope.LostKwhPerYear > 0);
    }

    [Fact]
    public void A_free_horizon_shades_nothing()
    {
        var envelope = Of(Horizon.Free);
        Assert.Empty(envelope.Shaded);
        Assert.Equal("no shade found", envelope.Say(CultureInfo.InvariantCulture).Figure);
        Assert.Throws<ArgumentOutOfRangeException>(() => envelope.Share(13, 0));
    }

    /// <summary>Whether the sun stands behind the hill at some moment of that hour on some day of that month.</summary>
    private static bool Behind(int month, int hour)
    {
        for (var day = new LocalDate(2023, month, 1); day.Month == month; day = day.PlusDays(1))
            for (var minute = 0; minute < 60; minute += 5)
                if (Sun.At(day.At(new LocalTime(hour, minute)).InZoneLeniently(Place.Zone).ToInstant(), Place).Direction is { Up: > 0 } sun && Hill.Hides(sun)) return true;
        return false;
    }
}
