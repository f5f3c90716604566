using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests.GenerationRoom;

/// <summary>Strings on inputs of their own and strings that share one. No published example was found: by hand, a naive scan of all voltages, and properties stand in.</summary>
public sealed class InputTests
{
    private static readonly Site Place = Site.At("Test", 53.2, -9.1, "Europe/Dublin", "EUR");
    private static readonly ModuleType Module = new("410", 410) { VocV = 37.4, VmpV = 31.3, IscA = 13.9, ImpA = 13.1, PowerPerK = -0.0035 };
    private static readonly Plane South = new(35, 180);
    private static readonly Plane West = new(35, 270);
    private static readonly Weather Days = GenerationModelTests.MadeUp(new IntervalGrid(Instant.FromUtc(2023, 6, 1, 0, 0), Duration.FromHours(1), 240), seed: 4, split: true);

    private static readonly InverterType TwoInputs = new("two inputs", 9000)
    {
        EachInput = [new InputLimits { TrackingFromV = 150, TrackingToV = 500, HighestInputA = 30 }, new InputLimits { TrackingFromV = 80, HighestInputA = 10, HighestInputW = 2500 }],
    };

    private static GenerationResult Run(InverterType inverter, int[] inputs, params ModuleArray[] arrays) =>
        new GenerationModel(inverter, arrays) { InputOfArray = inputs }.Run(Place, Days);

    private static ModuleArray Strings(int inSeries, int strings, Plane plane) => new($"{inSeries}", Module, inSeries, strings, plane);

    [Fact]
    public void Strings_of_unlike_length_and_face_lose_nothing_on_inputs_of_their_own()
    {
        var open = new InverterType("open", 9000) { EachInput = [new InputLimits { TrackingFromV = 90 }, new InputLimits { TrackingFromV = 90 }] };
        var result = Run(open, [1, 2], Strings(12, 1, South), Strings(5, 1, West));
        Assert.Equal(Run(open, [1], Strings(12, 1, South)).DcW.ToArray().Zip(Run(open, [2], Strings(5, 1, West)).DcW.ToArray(), (a, b) => a + b), result.DcW.ToArray(), (a, b) => Math.Abs(a - b) < 1e-6);
        Assert.Equal([0.0, 0.0], result.Inputs.Select(i => Math.Round(i.HeldBackKwh, 9)));
        // On one input they work at one voltage, and both give less than apart.
        var shared = Run(new InverterType("one input", 9000), [1, 1], Strings(12, 1, South), Strings(5, 1, West));
        Assert.True(shared.AcKwh < 0.9 * result.AcKwh);
        Assert.Equal(shared.Losses.Single(l => l.Name.Contains("inputs", StringComparison.Ordinal)).Kwh, shared.Inputs.Single().HeldBackKwh, 1e-9);
    }

    [Fact]
    public void Each_input_holds_its_own_current_and_power()
    {
        // By hand: five in series at 31.3 V and 10 A give no more than about 37.4/31.3 of 1,565 W; the second input's 2,500 W are never reached, but 10 A are.
        var result = Run(TwoInputs, [1, 2], Strings(12, 1, South), Strings(5, 1, South));
        Assert.Equal(0, result.Inputs[0].HeldBackKwh, 1e-9);
        Assert.True(result.Inputs[1].HeldBackKwh > 0);
        var strong = Run(TwoInputs, [2], Strings(12, 1, South));
        Assert.InRange(strong.DcW.ToArray().Max(), 2400, 2500);
        Assert.Equal(strong.NominalKwh - strong.AcKwh, strong.Losses.Sum(l => l.Kwh), 1e-9 * strong.NominalKwh);
    }

    [Fact]
    public void A_string_below_the_window_gives_what_is_left_at_its_lower_end_and_nothing_above_open_circuit()
    {
        double Kwh(double fromV) => Run(new InverterType("i", 9000) { TrackingFromV = fromV }, [1], Strings(5, 1, South)).AcKwh;
        Assert.Equal(Kwh(50), Kwh(120), 1e-6);        // 5 × 31.3 = 156 V, never down to 120
        Assert.True(Kwh(165) < Kwh(120));             // held above its best point
        Assert.Equal(0, Kwh(230), 1e-9);              // 5 × 37.4 = 187 V open, warm or cold never 230
    }

    [Fact]
    public void A_controller_s_window_begins_above_the_battery()
    {
        double Kwh(int inSeries) => new GenerationModel(new InverterType("i", 9000), Strings(inSeries, 6 / inSeries, South)) { Controller = new ControllerType("c"), BatteryV = 57.6 }.Run(Place, Days).AcKwh;
        Assert.True(Kwh(1) < 1e-9);                   // 31 V never reach 57.6 + 5
        Assert.True(Kwh(2) < Kwh(3));                 // 62.6 V warm fall short of 62.6 V at times: CV-P17's case
    }

    [Fact]
    public void A_naive_scan_of_all_voltages_finds_the_same()
    {
        var model = new GenerationModel(TwoInputs, Strings(9, 1, South), Strings(7, 1, West)) { InputOfArray = [1, 1] };
        var result = model.Run(Place, Days);
        var curve = NaiveCurve();
        var (a, b) = (Alone(Strings(9, 1, South)), Alone(Strings(7, 1, West)));
        for (var i = 0; i < Days.Grid.Count; i++)
        {
            var best = 0.0;
            for (var volt = 150.0; volt <= 400; volt += 0.05)
                best = Math.Max(best, volt * Math.Min(30, (a.W[i] / a.V[i] * curve(volt / a.V[i])) + (b.W[i] / b.V[i] * curve(volt / b.V[i]))));
            Assert.Equal(best, result.DcW[i], Math.Max(0.02, 2e-4 * best));
        }
    }

    [Fact]
    public void An_input_never_takes_more_than_is_offered_nor_gains_by_a_tighter_limit() =>
        Gen.Select(Gen.Int[2, 14], Gen.Int[2, 14], Gen.Double[60, 400], Gen.Double[2, 30]).Sample((first, second, from, amps) =>
        {
            InverterType With(double lowestV, double mostA) => new("i", 9000) { TrackingFromV = lowestV, TrackingToV = 450, HighestInputA = mostA };
            var loose = Run(With(from, amps), [1, 1], Strings(first, 1, South), Strings(second, 1, West)).Inputs.Single();
            Assert.InRange(loose.TakenKwh, 0, loose.OfferedKwh * (1 + 1e-9));
            Assert.True(Run(With(from + 20, amps), [1, 1], Strings(first, 1, South), Strings(second, 1, West)).Inputs.Single().TakenKwh <= loose.TakenKwh + (1e-4 * loose.OfferedKwh));
            Assert.True(Run(With(from, amps / 2), [1, 1], Strings(first, 1, South), Strings(second, 1, West)).Inputs.Single().TakenKwh <= loose.TakenKwh + (1e-4 * loose.OfferedKwh));
        }, iter: 60);

    [Fact]
    public void Lanes_agree_and_an_unknown_voltage_says_that_it_cannot_be_told()
    {
        GenerationModelTests.AssertLanesAgree(new GenerationModel(TwoInputs, Strings(12, 1, South), Strings(5, 2, West)) { InputOfArray = [1, 2] }, Days);
        var unknown = Run(TwoInputs, [1], new ModuleArray("a", new ModuleType("m", 410), 20, 3, South));
        Assert.False(unknown.Inputs.Single().KnowsVoltage);
        Assert.Contains(unknown.Say(System.Globalization.CultureInfo.InvariantCulture).Notes, n => n.Contains("cannot be told", StringComparison.Ordinal));
    }

    [Fact]
    public void Inputs_that_do_not_exist_are_named()
    {
        var wrong = Assert.Throws<ArgumentException>(() => Run(TwoInputs, [1, 3], Strings(9, 1, South), Strings(5, 1, West)));
        Assert.Equal("Found inputs 1, 3 for 2 arrays, expected one for each, from 1 to 2, the inputs of two inputs.", wrong.Message);
        Assert.Throws<ArgumentException>(() => Run(TwoInputs, [1], Strings(9, 1, South), Strings(5, 1, West)));
        Assert.Throws<ArgumentOutOfRangeException>(() => TwoInputs.LimitsOf(3));
        Assert.Equal((80.0, 10.0), (TwoInputs.LimitsOf(2).TrackingFromV!.Value, TwoInputs.LimitsOf(2).HighestInputA!.Value));
    }

    /// <summary>What an array gives alone, and the operating voltage of its string by its cells' heat, from the public formulas.</summary>
    private static (double[] W, double[] V) Alone(ModuleArray array)
    {
        var result = new GenerationModel(new InverterType("i", 1e6), array).Run(Place, Days);
        double[] volts = [.. Enumerable.Range(0, Days.Grid.Count).Select(i =>
            Strings(array.InSeries, result.PlaneWm2[i], i))];
        return (result.DcW.ToArray(), volts);

        static double Strings(int inSeries, double planeWm2, int i) =>
            SolarEconomics.Strings.VoltageAt(inSeries * 31.3, -0.0035, CellTemperature.ByHeatShed(planeWm2, Days.AirC[i], Days.WindMs[i], Mounting.OpenRack));
    }

    /// <summary>The sheet's curve in parts of its own highest point, found by a plain scan.</summary>
    private static Func<double, double> NaiveCurve()
    {
        var c2 = ((31.3 / 37.4) - 1) / Math.Log(1 - (13.1 / 13.9));
        var c1 = (1 - (13.1 / 13.9)) * Math.Exp(-31.3 / (c2 * 37.4));
        double Amps(double volt) => Math.Max(0, 13.9 * (1 - (c1 * (Math.Exp(volt / (c2 * 37.4)) - 1))));
        var best = Enumerable.Range(1, 374_000).Select(i => i / 10_000.0).MaxBy(volt => volt * Amps(volt));
        return x => Amps(x * best) / Amps(best);
    }
}
