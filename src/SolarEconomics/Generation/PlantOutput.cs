using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>What all arrays of a plant make of a weather record, as the plant stands on one day.</summary>
/// <remarks>Immutable, so safe to share between threads.</remarks>
public sealed partial class PlantOutput : IFinding
{
    private readonly double[] _acW;

    private PlantOutput(Site site, LocalDate on, Weather weather, IReadOnlyList<DeviceOutput> devices, PlantOutputOptions options)
    {
        (Site, On, Weather, Devices) = (site, on, weather, devices);
        _acW = new double[weather.Grid.Count];
        foreach (var device in devices)
            for (var i = 0; i < _acW.Length; i++) _acW[i] += device.Result.AcW[i];
        AgeingForAll = options.Ageing;
        (CurtailedKwh, IsCurtailmentKnown) = CurtailedIn(options, weather.Grid.StepHours);
    }

    /// <summary>The site with its plant.</summary>
    public Site Site { get; }

    /// <summary>The day on which the plant is taken as it stands, its modules aged to it.</summary>
    public LocalDate On { get; }

    /// <summary>The weather.</summary>
    public Weather Weather { get; }

    /// <summary>The devices with modules behind them, in the plant's order.</summary>
    public IReadOnlyList<DeviceOutput> Devices { get; }

    /// <summary>The caller's rule of ageing for all modules, where there was one.</summary>
    internal Ageing? AgeingForAll { get; }

    /// <summary>AC power of all devices, before any limit on export. Unit: W.</summary>
    public ReadOnlySpan<double> AcW => _acW;

    /// <summary>Energy at AC, before any limit on export. Unit: kWh.</summary>
    public double AcKwh => Devices.Sum(d => d.Result.AcKwh);

    /// <summary>Energy that the inverters clip. Unit: kWh. With steps of an hour a lower bound.</summary>
    public double ClippedKwh => Devices.Sum(d => d.Result.ClippedKwh);

    /// <summary>The losses of all devices together, by name, in the order of the energy's way. Their sum is nominal less AC.</summary>
    public IReadOnlyList<GenerationLoss> Losses
    {
        get
        {
            var nominal = Devices.Sum(d => d.Result.NominalKwh);
            return [.. Devices.SelectMany(d => d.Result.Losses).GroupBy(l => l.Name, StringComparer.Ordinal).OrderBy(g => LossNames.InOrder.IndexOf(g.Key))
                .Select(g => new GenerationLoss(g.Key, g.Sum(l => l.Kwh), nominal > 0 ? g.Sum(l => l.Kwh) / nominal : 0))];
        }
    }

    /// <summary>Energy above use and the limit on export. Unit: kWh. 0 where <see cref="IsCurtailmentKnown"/> is false.</summary>
    /// <remarks>Without a battery: what one would store is in it too. Equation: Σ max(0, generation − use − limit · hours).</remarks>
    public double CurtailedKwh { get; }

    /// <summary>Whether use and limit were given, so that curtailment could be told.</summary>
    public bool IsCurtailmentKnown { get; }

    /// <summary>Works through a weather record with the plant as it stands on a day.</summary>
    /// <param name="site">The site; its plant has arrays in their places.</param>
    /// <param name="on">The day. History and plans are one object: any day will do.</param>
    /// <param name="weather">Sun, air and wind.</param>
    /// <param name="options">Choices. Default: each type's own ageing, no limit on export.</param>
    /// <exception cref="ArgumentException">No array stands on that day, or a device has neither inverter nor rated power.</exception>
    public static PlantOutput Of(Site site, LocalDate on, Weather weather, PlantOutputOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(site);
        ArgumentNullException.ThrowIfNull(weather);
        options ??= new PlantOutputOptions();
        if (options.UseKwh is { } use && use.Count != weather.Grid.Count) throw Throw.WeatherColumnLength("use", use.Count, weather.Grid.Count);
        var standing = site.Plant.StandingOn(on);
        if (standing.Count == 0) throw Throw.NoArrays(site.Name);
        var devices = site.Plant.Devices
            .Select(device => (Device: device, Own: standing.Where(p => string.Equals(p.Device, device.Name, StringComparison.Ordinal)).ToList()))
            .Where(pair => pair.Own.Count > 0)
            .Select(pair => new DeviceOutput(pair.Device, pair.Own, options.Model(ModelOf(site.Plant, pair.Device, pair.Own, on, options)).Run(site, weather)));
        return new PlantOutput(site, on, weather, [.. devices], options);
    }

    /// <summary>The model of one device with its arrays, aged to a day.</summary>
    internal static GenerationModel ModelOf(Plant plant, Device device, IReadOnlyList<Placement> own, LocalDate on, PlantOutputOptions options)
    {
        var inverter = device.Inverter ?? (device.RatedAcKw > 0
            ? new InverterType(device.Name, device.RatedAcKw * 1000) { Inputs = own.Max(p => p.Input) } : throw Throw.NoInverterRating(device.Name));
        return new GenerationModel(inverter, [.. own.Select(p => p.Array with { AgeFactor = plant.ShareLeft(p, on, options.Ageing).Share })])
        {
            Controller = device.Controller,
            InputOfArray = [.. own.Select(p => p.Input)],
            Shade = options.Shade.FirstOrDefault(s => string.Equals(s.Device, device.Name, StringComparison.Ordinal)),
        };
    }

    /// <summary>AC energy of each calendar month of the site's clock, in order. Unit: kWh.</summary>
    public IReadOnlyList<(YearMonth Month, double Kwh)> ByMonth() =>
        [.. Devices.SelectMany(d => d.Result.ByMonth()).GroupBy(m => m.Month).OrderBy(g => g.Key).Select(g => (g.Key, g.Sum(m => m.Kwh)))];

    /// <summary>AC energy by calendar month (row, January first) and hour of the site's clock (column, 0 to 23). Unit: kWh.</summary>
    public double[,] ByMonthAndHour()
    {
        var table = new double[12, 24];
        var grid = Weather.Grid;
        for (var i = 0; i < _acW.Length; i++)
        {
            var local = (grid.StartOf(i) + (grid.Step / 2)).InZone(Site.Zone);
            table[local.Month - 1, local.Hour] += _acW[i] * grid.StepHours / 1000;
        }
        return table;
    }

    private (double Kwh, bool IsKnown) CurtailedIn(PlantOutputOptions options, double stepHours)
    {
        if (options is not { ExportLimitKw: { } limit, UseKwh: { } use }) return (0, false);
        var kwh = 0.0;
        for (var i = 0; i < _acW.Length; i++) kwh += Math.Max(0, (_acW[i] * stepHours / 1000) - use[i] - (limit * stepHours));
        return (kwh, true);
    }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture) => PlantOutputWords.Say(this, culture);
}
