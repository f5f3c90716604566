using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests.PlantRoom;

/// <summary>Cables of an array: by hand, by a naive walk over steps, and by property; no published example was found.</summary>
public sealed class CableTests
{
    private static readonly Site Place = Site.At("Test", 53.2, -9.1, "Europe/Dublin", "EUR");
    private static readonly ModuleType Module = new("270", 270) { VocV = 38.2, VmpV = 31.2, IscA = 9.2, ImpA = 8.66 };
    private static readonly ModuleArray Array = new("a", Module, 7, 2, new Plane(35, 180)) { Cable = new Cable(20, 6) };
    private static readonly Weather Days = GenerationRoom.GenerationModelTests.MadeUp(new IntervalGrid(Instant.FromUtc(2023, 6, 1, 0, 0), Duration.FromHours(1), 240), seed: 2, split: true);

    [Fact]
    public void The_loss_at_rated_power_is_resistance_times_current_over_voltage()
    {
        // By hand: 2 · 20 m / 58 / 6 mm² = 0.114943 Ω at 20 °C; 17.32 A of it are 1.99 V of 218.4 V.
        Assert.Equal(0.114943, Array.Cable!.Ohm(20), 1e-6);
        Assert.Equal(0.114943 * (1 + (0.00393 * 25)), Array.Cable.Ohm(), 1e-6);
        Assert.Equal(0.114943 * 1.09825 * 17.32 / 218.4, Array.Cable.LossAtRated(Array)!.Value, 1e-7);
        Assert.Null(Array.Cable.LossAtRated(new ModuleArray("b", new ModuleType("m", 270), 7, 2, Plane.Level)));
    }

    [Fact]
    public void The_model_takes_a_described_cable_before_its_own_share()
    {
        double Lost(ModuleArray array, double share) => new GenerationModel(new InverterType("i", 9000), array) { WiringLossAtRated = share }.Run(Place, Days).Losses.Single(l => l.Name == "cables").Kwh;
        Assert.Equal(Lost(Array, 0.015), Lost(Array, 0.1), 1e-12);
        Assert.Equal(Lost(Array, 0), Lost(Array with { Cable = null }, Array.Cable!.LossAtRated(Array)!.Value), 1e-9);
        GenerationRoom.GenerationModelTests.AssertLanesAgree(new GenerationModel(new InverterType("i", 3000), Array), Days);
    }

    [Fact]
    public void Twice_the_length_loses_twice_and_twice_the_section_half() =>
        Gen.Select(Gen.Double[1, 400], Gen.Double[1, 100]).Sample((length, section) =>
        {
            double Loss(double l, double s) => new Cable(l, s).LossAtRated(Array)!.Value;
            Assert.Equal(2 * Loss(length, section), Loss(2 * length, section), 1e-12);
            Assert.Equal(Loss(length, section) / 2, Loss(length, 2 * section), 1e-12);
        });

    [Fact]
    public void A_cable_that_eats_the_power_is_named_and_a_moved_array_leaves_its_cable()
    {
        Plant With(Cable cable) => new Plant([new Device("d", MeasurementPoint.InverterAcOut)]).With(new Placement(Array with { Cable = cable }, "d") { From = new(2020, 1, 1) });
        Assert.Contains("found a cable of 400 m and 2.5 mm² that loses 48 % at the rated power of a, expected 1 to 3 %", Assert.Throws<ArgumentException>(() => With(new Cable(400, 2.5))).Message, StringComparison.Ordinal);
        Assert.Null(With(new Cable(20, 6)).After(new MoveModules(new(2021, 1, 1), "a", "b", "d", new Face("f", Plane.Level))).StandingOn(new(2021, 1, 1)).Single().Array.Cable);
        Assert.Throws<ArgumentOutOfRangeException>(() => new Cable(-1, 6));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Cable(20, 0.1));
    }

    [Fact]
    public void A_data_sheet_s_noct_is_a_mounting_of_the_model_too()
    {
        Assert.Equal(CellTemperature.ByNoct(800, 25, 45), CellTemperature.ByHeatShed(800, 25, 7, Mounting.OfNoct(45)), 1e-12);
        double Heat(Mounting mounting) => new GenerationModel(new InverterType("i", 9000), Array with { Mounting = mounting }).Run(Place, Days).Losses.Single(l => l.Name == "heat").Kwh;
        Assert.True(Heat(Mounting.OfNoct(50)) > Heat(Mounting.OfNoct(42)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Mounting.OfNoct(20));
    }
}
