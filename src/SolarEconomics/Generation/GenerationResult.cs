using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>What a model makes of a weather record: power step by step, and every loss on the way.</summary>
/// <remarks>The losses sum: nominal − all losses = AC. Immutable, so safe to share between threads.</remarks>
public sealed class GenerationResult : IFinding
{
    private readonly double[] _planeWm2;
    private readonly double[] _dcW;
    private readonly double[] _acW;

    internal GenerationResult(GenerationModel model, Site site, Weather weather, StageSums sums, IReadOnlyList<InputOutput> inputs, double[] planeWm2, double[] dcW, double[] acW)
    {
        Model = model;
        Site = site;
        Weather = weather;
        (_planeWm2, _dcW, _acW) = (planeWm2, dcW, acW);
        var toKwh = weather.Grid.StepHours / 1000;
        NominalKwh = sums.Nominal * toKwh;
        Inputs = inputs;
        Losses = ListLosses(model, sums, inputs.Count > 0, toKwh);
        HeatFactor = sums.AfterLowLight > 0 ? sums.AfterHeat / sums.AfterLowLight : 1;
        AcKwh = sums.AfterClipping * (1 - model.DownTime) * toKwh;
        ClippedHours = sums.ClippedSteps * weather.Grid.StepHours;
        StandbyKwh = model.Inverter.NightW * dcW.Count(w => w <= 0) * toKwh;
    }

    /// <summary>The model.</summary>
    public GenerationModel Model { get; }

    /// <summary>The site.</summary>
    public Site Site { get; }

    /// <summary>The weather.</summary>
    public Weather Weather { get; }

    /// <summary>Light on the planes, mean of the arrays by their kWp, shade taken off. Unit: W/m².</summary>
    public ReadOnlySpan<double> PlaneWm2 => _planeWm2;

    /// <summary>Power at the inverter's DC side. Unit: W.</summary>
    public ReadOnlySpan<double> DcW => _dcW;

    /// <summary>Power at AC. Unit: W.</summary>
    public ReadOnlySpan<double> AcW => _acW;

    /// <summary>Rated power at the light that falls on the planes, before any loss. Unit: kWh.</summary>
    public double NominalKwh { get; }

    /// <summary>What is lost between nominal and AC, in the order of the energy's way. Their sum is nominal less AC.</summary>
    public IReadOnlyList<GenerationLoss> Losses { get; }

    /// <summary>What each input took of what its arrays offered; empty where no limit of an input is known and none is shared by unlike strings.</summary>
    public IReadOnlyList<InputOutput> Inputs { get; }

    /// <summary>Energy that the inverter clips at its AC limit. Unit: kWh. Steps of an hour hide short peaks: then a lower bound.</summary>
    public double ClippedKwh => Losses.Single(l => string.Equals(l.Name, LossNames.Clipping, StringComparison.Ordinal)).Kwh;

    /// <summary>Energy at AC. Unit: kWh.</summary>
    public double AcKwh { get; }

    /// <summary>Hours in which the inverter clipped. Steps of an hour hide short peaks: then a lower bound.</summary>
    public double ClippedHours { get; }

    /// <summary>Energy that the inverter takes by night. Unit: kWh. Load of the plant, in no loss above.</summary>
    public double StandbyKwh { get; }

    /// <summary>Yields and performance ratio.</summary>
    public Yields Yields => new(AcKwh, Model.RatedKwp, _planeWm2.Sum() * Weather.Grid.StepHours / 1000);

    /// <summary>Power of warm or cold cells over that of cells at 25 °C, weighted by what they make.</summary>
    public double HeatFactor { get; }

    /// <summary>Performance ratio with the heat of the cells taken off: as it would be at 25 °C. Equation: PR / <see cref="HeatFactor"/>. Source: gen-7.</summary>
    public double PerformanceRatioAt25C => HeatFactor > 0 ? Yields.PerformanceRatio / HeatFactor : 0;

    /// <summary>Power at AC as it would be without the inverter's AC limit. Unit: W.</summary>
    internal double[] UnclippedAcW()
    {
        var stage = new AcStage(Model);
        return [.. _dcW.Select(stage.Unclipped)];
    }

    /// <summary>AC energy of each calendar month of the site's clock, in order. Unit: kWh.</summary>
    public IReadOnlyList<(YearMonth Month, double Kwh)> ByMonth()
    {
        var months = new List<(YearMonth Month, double Kwh)>();
        var grid = Weather.Grid;
        var (until, sum) = (Instant.MinValue, 0.0);
        YearMonth month = default;
        for (var i = 0; i < _acW.Length; i++)
        {
            var start = grid.StartOf(i);
            if (start >= until)
            {
                if (i > 0) months.Add((month, sum));
                month = start.InZone(Site.Zone).Date.ToYearMonth();
                until = month.PlusMonths(1).OnDayOfMonth(1).AtStartOfDayInZone(Site.Zone).ToInstant();
                sum = 0;
            }
            sum += _acW[i] * grid.StepHours / 1000;
        }
        if (_acW.Length > 0) months.Add((month, sum));
        return months;
    }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture) => GenerationWords.Say(this, culture);

    private static IReadOnlyList<GenerationLoss> ListLosses(GenerationModel model, StageSums sums, bool hasInputs, double toKwh)
    {
        GenerationLoss Loss(string name, double lost) => new(name, lost * toKwh, sums.Nominal > 0 ? lost / sums.Nominal : 0);
        var soiled = sums.AfterReflection * (1 - model.SoilingLoss);
        var matched = sums.AfterAge * (1 - model.MismatchLoss);
        return
        [
            Loss(LossNames.Shade, sums.Nominal - sums.AfterShade),
            .. model.Shade is null ? [] : new[] { Loss(LossNames.SeasonalShade, sums.AfterShade - sums.AfterSeasonalShade) },
            Loss(LossNames.Glass, sums.AfterSeasonalShade - sums.AfterReflection),
            Loss(LossNames.Dirt, sums.AfterReflection - soiled),
            Loss(LossNames.FaintLight, soiled - sums.AfterLowLight),
            Loss(LossNames.Heat, sums.AfterLowLight - sums.AfterHeat),
            Loss(LossNames.Age, sums.AfterHeat - sums.AfterAge),
            Loss(LossNames.Mismatch, sums.AfterAge - matched),
            Loss(LossNames.Cables, matched - sums.AfterWiring),
            .. hasInputs ? new[] { Loss(LossNames.Inputs, sums.AfterWiring - sums.AfterInputs) } : [],
            .. model.Controller is null ? [] : new[] { Loss(LossNames.Controller, sums.AfterInputs - sums.AfterController) },
            Loss(LossNames.InputLimit, sums.AfterController - sums.AfterInputLimit),
            Loss(LossNames.Inverter, sums.AfterInputLimit - sums.AfterConversion),
            Loss(LossNames.Clipping, sums.AfterConversion - sums.AfterClipping),
            Loss(LossNames.DownTime, sums.AfterClipping * model.DownTime),
        ];
    }
}
