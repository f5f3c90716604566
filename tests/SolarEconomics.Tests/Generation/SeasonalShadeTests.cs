using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests.GenerationRoom;

/// <summary>Shade found in a record and laid on a model that knows nothing of the hill, against the model that does.</summary>
public sealed class SeasonalShadeTests
{
    private static readonly Horizon Hill = Horizon.Of((0, 0), (215, 0), (220, 28), (300, 28), (305, 0));
    private static readonly Site Bare = Site.At("Test", 53.2, -9.1, "Europe/Dublin", "EUR");
    private static readonly InverterType Inverter = new("i", 5000);
    private static readonly IntervalGrid Grid = new(Instant.FromUtc(2023, 1, 1, 0, 0), Duration.FromMinutes(30), 17520);
    private static readonly Weather Sky = MadeUp();
    private static readonly ModuleArray Shaded = new("a", new ModuleType("m", 400), 10, 1, new Face("roof", new Plane(35, 180)) { Horizon = Hill });
    private static readonly ModuleArray Free = Shaded with { Face = Shaded.Face with { Horizon = Horizon.Free } };
    private static readonly GenerationResult True = new GenerationModel(Inverter, Shaded).Run(Bare, Sky);

    /// <summary>Every third day clear, the others dull by a share of their own.</summary>
    private static Weather MadeUp()
    {
        var clear = Weather.Clear(Bare, Grid);
        var random = new Random(11);
        var (global, beam, diffuse, open) = (new double[Grid.Count], new double[Grid.Count], new double[Grid.Count], 1.0);
        for (var i = 0; i < Grid.Count; i++)
        {
            if (i % 48 == 0) open = i / 48 % 3 == 0 ? 1 : 0.3 + (0.6 * random.NextDouble());
            (beam[i], diffuse[i]) = (clear.BeamNormalWm2[i] * open * open, clear.DiffuseWm2[i] * (1.5 - (open / 2)));
            global[i] = ((clear.GlobalWm2[i] - clear.DiffuseWm2[i]) * open * open) + diffuse[i];
        }
        return Weather.OfParts(Grid, global, beam, diffuse, clear.AirC.ToArray(), clear.WindMs.ToArray(), "made up");
    }

    private static Site Place(ModuleArray array) => Bare with
    {
        Plant = new Plant([new Device("roof", MeasurementPoint.InverterAcOut) { Inverter = Inverter, InService = new(2023, 1, 1) }]).With(new Placement(array, "roof") { From = new(2023, 1, 1) }),
    };

    private static Readings Record(double factor)
    {
        var (starts, ends, kwh) = (new Instant[Grid.Count], new Instant[Grid.Count], new double[Grid.Count]);
        for (var i = 0; i < Grid.Count; i++) (starts[i], ends[i], kwh[i]) = (Grid.StartOf(i), Grid.StartOf(i + 1), True.AcW[i] * factor / 2000);
        return new Readings([new Channel("generation roof", FlowKind.Generation, starts, ends, kwh, new Quality[Grid.Count]) { Device = "roof" }], [], []);
    }

    [Fact]
    public void The_model_takes_the_shade_in_one_call_and_comes_near_the_hill_that_it_does_not_know()
    {
        var site = Place(Free);
        var envelope = ShadeEnvelope.Of(site, Record(0.95), "roof");
        PlantOutput With(params ShadeEnvelope[] shade) => PlantOutput.Of(site, new(2023, 1, 1), Sky, new() { Ageing = Ageing.None, Shade = shade });
        var (without, with) = (With(), With(envelope));
        // Hours that the hill takes less than a quarter of, and those too low to tell, are left: a lower bound.
        Assert.InRange(with.AcKwh, True.AcKwh * 0.99, without.AcKwh);
        Assert.InRange(without.AcKwh - with.AcKwh, 0.5 * (without.AcKwh - True.AcKwh), 1.1 * (without.AcKwh - True.AcKwh));
        var line = with.Losses.Single(l => l.Name == "seasonal shade");
        Assert.InRange(line.Kwh, 0.5 * True.Losses.Single(l => l.Name == "shade").Kwh, 1.1 * True.Losses.Single(l => l.Name == "shade").Kwh);
        Assert.DoesNotContain(without.Losses, l => l.Name == "seasonal shade");
        Assert.Equal(with.Devices.Sum(d => d.Result.NominalKwh) - with.AcKwh, with.Losses.Sum(l => l.Kwh), 1e-6);
        var said = with.Say(CultureInfo.InvariantCulture);
        Assert.Contains(said.Tables[1].Rows, r => r[0] == "seasonal shade");
        Assert.Contains(said.Notes, n => n.StartsWith("Seasonal shade as found in the record of roof", StringComparison.Ordinal));
    }

    [Fact]
    public void The_described_hill_is_not_counted_a_second_time()
    {
        var envelope = ShadeEnvelope.Of(Place(Shaded), Record(1), "roof");
        double Kwh(ModuleArray array) => new GenerationModel(Inverter, array) { Shade = envelope }.Run(Bare, Sky).AcKwh;
        Assert.Equal(Kwh(Free), Kwh(Shaded), 1e-9);
    }

    [Fact]
    public void A_dull_sky_loses_little_of_it()
    {
        var envelope = ShadeEnvelope.Of(Place(Free), Record(1), "roof");
        var dull = Weather.OfGlobal(Grid, [.. Sky.GlobalWm2.ToArray().Select(g => 0.2 * g)], Sky.AirC.ToArray(), Sky.WindMs.ToArray(), "overcast");
        double Share(Weather weather)
        {
            var result = new GenerationModel(Inverter, Free) { Shade = envelope }.Run(Bare, weather);
            return result.Losses.Single(l => l.Name == "seasonal shade").Share;
        }
        Assert.InRange(Share(dull), 0, 0.5 * Share(Sky));
    }

    [Fact]
    public void An_envelope_without_shade_takes_nothing()
    {
        var free = new GenerationModel(Inverter, Free).Run(Bare, Sky);
        var (starts, ends, kwh) = (new Instant[Grid.Count], new Instant[Grid.Count], new double[Grid.Count]);
        for (var i = 0; i < Grid.Count; i++) (starts[i], ends[i], kwh[i]) = (Grid.StartOf(i), Grid.StartOf(i + 1), free.AcW[i] / 2000);
        var none = ShadeEnvelope.Of(Place(Free), new Readings([new Channel("generation roof", FlowKind.Generation, starts, ends, kwh, new Quality[Grid.Count]) { Device = "roof" }], [], []), "roof");
        var result = new GenerationModel(Inverter, Free) { Shade = none }.Run(Bare, Sky);
        Assert.Equal(0, result.Losses.Single(l => l.Name == "seasonal shade").Kwh);
        Assert.Equal(free.AcKwh, result.AcKwh, 1e-6 * free.AcKwh);
    }
}
