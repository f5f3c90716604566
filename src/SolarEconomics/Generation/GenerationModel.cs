namespace SolarEconomics;

/// <summary>From sun and weather to AC: arrays on one inverter, with every loss between them.</summary>
/// <remarks>Losses are fractions. Each input works at one voltage, that of most power; inputs meet at the inverter's DC side. Immutable, so safe to share between threads.</remarks>
public sealed partial record GenerationModel
{
    /// <summary>A model of arrays behind one inverter.</summary>
    /// <param name="inverter">Type of the inverter.</param>
    /// <param name="arrays">The arrays on it, one or more.</param>
    /// <exception cref="ArgumentException">There is no array.</exception>
    public GenerationModel(InverterType inverter, params IReadOnlyList<ModuleArray> arrays)
    {
        ArgumentNullException.ThrowIfNull(inverter);
        ArgumentNullException.ThrowIfNull(arrays);
        if (arrays.Count == 0) throw new ArgumentException("Found an inverter without arrays, expected at least one.", nameof(arrays));
        Inverter = inverter;
        Arrays = arrays;
    }

    /// <summary>Type of the inverter.</summary>
    public InverterType Inverter { get; }

    /// <summary>The arrays on it.</summary>
    public IReadOnlyList<ModuleArray> Arrays { get; }

    /// <summary>Rated power of all arrays. Unit: kWp.</summary>
    public double RatedKwp => Arrays.Sum(a => a.RatedKwp);

    /// <summary>The charge controller in front of the inverter. Default: <see langword="null"/>, none. Its charging current limits what passes, by the battery's voltage.</summary>
    public ControllerType? Controller { get; init; }

    /// <summary>Voltage of the battery behind the controller. Unit: V. Range: 1 to 1,500. Default: 51.2, sixteen cells of 3.2 V.</summary>
    public double BatteryV { get; init => field = Require.Within(value, 1, 1500, "V of the battery", nameof(BatteryV)); } = 51.2;

    /// <summary>How the sky's light is spread. Default: <see cref="SkyModel.HayDavies"/>.</summary>
    public SkyModel Sky { get; init; } = SkyModel.HayDavies;

    /// <summary>Share of global that the ground throws back. Range: 0 to 1. Default: 0.2.</summary>
    public double GroundReflection { get; init => field = Require.Fraction(value); } = 0.2;

    /// <summary>Share lost to dirt. Range: 0 to 1. Default: 0.02, common practice, no source.</summary>
    public double SoilingLoss { get; init => field = Require.Fraction(value); } = 0.02;

    /// <summary>Share lost because modules differ. Range: 0 to 1. Default: 0.01, common practice, no source.</summary>
    public double MismatchLoss { get; init => field = Require.Fraction(value); } = 0.01;

    /// <summary>Share lost in the cables at rated power, of arrays whose cable is not described; at less power it falls in proportion. Range: 0 to 0.2. Default: 0.015, common practice, no source.</summary>
    public double WiringLossAtRated { get; init => field = Require.Within(value, 0, 0.2, "a fraction; 1.5 % is written 0.015"); } = 0.015;

    /// <summary>Share of the modules' initial power that is left, from <see cref="Ageing.FactorAt"/>. Range: 0 to 1. Default: 1.</summary>
    public double AgeFactor { get; init => field = Require.Fraction(value); } = 1;

    /// <summary>Share of the time in which the plant does not run. Range: 0 to 1. Default: 0.</summary>
    public double DownTime { get; init => field = Require.Fraction(value); }

    /// <summary>What stands around the place. Default: <see cref="SolarEconomics.Horizon.Free"/>.</summary>
    public Horizon Horizon { get; init; } = Horizon.Free;

    /// <summary>Seasonal shade found in the plant's own record. Default: <see langword="null"/>, none. It holds all that shades, so horizons and rows are put aside with it.</summary>
    public ShadeEnvelope? Shade { get; init; }

    /// <summary>Rows that shade each other, all arrays alike. Default: <see langword="null"/>, none.</summary>
    public Rows? Rows { get; init; }

    /// <summary>Works through a weather record.</summary>
    /// <param name="site">The site.</param>
    /// <param name="weather">Sun, air and wind.</param>
    /// <param name="cancel">Stops between blocks of 1,024 steps.</param>
    /// <remarks>Even and <see cref="SkyModel.HayDavies"/> skies over a free horizon run in vector lanes, array by array; all else step by step. The two agree to 1e-9. Source: gen-1 to gen-4.</remarks>
    public GenerationResult Run(Site site, Weather weather, CancellationToken cancel = default) => Run(site, weather, inLanes: true, cancel);

    internal GenerationResult Run(Site site, Weather weather, bool inLanes, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(site);
        ArgumentNullException.ThrowIfNull(weather);
        var count = weather.Grid.Count;
        var track = new SunTrack(site.LatitudeDeg, site.LongitudeDeg, weather.Grid);
        var block = new StepBlock();
        var stages = Arrays.Select(a => new DcStage(a, this)).ToArray();
        var inputs = InputStage.Of(this, stages);
        var inverter = new AcStage(this);
        var sums = new StageSums();
        var (planeWm2, dcW, acW) = (new double[count], new double[count], new double[count]);
        for (var first = 0; first < count; first += StepBlock.Size)
        {
            cancel.ThrowIfCancellationRequested();
            var steps = Math.Min(StepBlock.Size, count - first);
            block.Load(weather, track, first, steps);
            Shade?.Fill(block.Unshaded.AsSpan(0, steps), weather.Grid, first, site.Zone);
            foreach (var stage in stages)
            {
                if (inLanes && stage.FitsLanes) stage.InLanes(block, sums);
                else stage.StepByStep(block, steps, sums);
            }
            if (inputs.Count > 0) InputStage.Run(inputs, block, steps);
            if (inLanes) inverter.InLanes(block, sums);
            else inverter.StepByStep(block, steps, sums);
            block.Store(planeWm2.AsSpan(first, steps), dcW.AsSpan(first, steps), acW.AsSpan(first, steps));
        }
        var toKwh = weather.Grid.StepHours / 1000;
        InputOutput[] taken = [.. inputs.Select(i => i.Result(toKwh))];
        sums.AfterInputs = inputs.Count == 0 ? sums.AfterWiring : taken.Sum(t => t.TakenKwh) / toKwh;
        return new GenerationResult(this, site, weather, sums, taken, planeWm2, dcW, acW);
    }
}
