using NodaTime;

namespace SolarEconomics;

/// <summary>Sun, air and wind at a place, step by step. A step's values are means over the step; its sun is taken at the middle.</summary>
/// <remarks>Immutable once made, so safe to share between threads.</remarks>
public sealed partial class Weather
{
    private readonly double[] _globalWm2;
    private readonly double[]? _beamWm2;
    private readonly double[]? _diffuseWm2;
    private readonly double[] _airC;
    private readonly double[] _windMs;

    private Weather(IntervalGrid grid, double[] globalWm2, double[]? beamWm2, double[]? diffuseWm2, double[] airC, double[] windMs, string origin)
    {
        Grid = grid;
        _globalWm2 = globalWm2;
        _beamWm2 = beamWm2;
        _diffuseWm2 = diffuseWm2;
        _airC = airC;
        _windMs = windMs;
        Origin = origin;
    }

    /// <summary>The steps.</summary>
    public IntervalGrid Grid { get; }

    /// <summary>Where the figures come from, in words; printed with every result.</summary>
    public string Origin { get; }

    /// <summary>Why what is made of this weather is a lower bound, in words; <see langword="null"/> where it is none.</summary>
    public string? LowerBoundWhy { get; private init; }

    /// <summary>Global on level ground. Unit: W/m².</summary>
    public ReadOnlySpan<double> GlobalWm2 => _globalWm2;

    /// <summary>Beam square to the sun, empty where only global is known. Unit: W/m².</summary>
    public ReadOnlySpan<double> BeamNormalWm2 => _beamWm2;

    /// <summary>Diffuse on level ground, empty where only global is known. Unit: W/m².</summary>
    public ReadOnlySpan<double> DiffuseWm2 => _diffuseWm2;

    /// <summary>Air. Unit: °C.</summary>
    public ReadOnlySpan<double> AirC => _airC;

    /// <summary>Wind. Unit: m/s.</summary>
    public ReadOnlySpan<double> WindMs => _windMs;

    /// <summary>Whether beam and diffuse are known apart.</summary>
    public bool IsSplit => _beamWm2 is not null;

    /// <summary>Global energy over all steps. Unit: kWh/m².</summary>
    public double GlobalKwhM2 => _globalWm2.Sum() * Grid.StepHours / 1000;

    /// <summary>Weather where only global is known; beam and diffuse follow by <see cref="Decomposition"/>.</summary>
    /// <param name="grid">The steps.</param>
    /// <param name="globalWm2">Global on level ground, in W/m². One per step. Range: 0 to 2,000.</param>
    /// <param name="airC">Air, in °C. One per step. Range: −90 to 70.</param>
    /// <param name="windMs">Wind, in m/s. One per step. Range: 0 to 60.</param>
    /// <param name="origin">Where the figures come from, in words.</param>
    /// <exception cref="ArgumentException">A column has another length than the grid, or a value is outside its range; the message names the step.</exception>
    public static Weather OfGlobal(IntervalGrid grid, double[] globalWm2, double[] airC, double[] windMs, string origin)
    {
        ArgumentNullException.ThrowIfNull(origin);
        CheckColumn(grid, globalWm2, "global", 0, 2000, "W/m²; cut a night offset at 0 first");
        CheckColumn(grid, airC, "air", -90, 70, "°C");
        CheckColumn(grid, windMs, "wind", 0, 60, "m/s");
        return new Weather(grid, globalWm2, null, null, airC, windMs, origin);
    }

    /// <summary>Weather where beam and diffuse are known apart.</summary>
    /// <param name="grid">The steps.</param>
    /// <param name="globalWm2">Global on level ground, in W/m². One per step. Range: 0 to 2,000.</param>
    /// <param name="beamNormalWm2">Beam square to the sun, in W/m². One per step. Range: 0 to 1,500.</param>
    /// <param name="diffuseWm2">Diffuse on level ground, in W/m². One per step, not above global (1 W/m² of rounding is let pass).</param>
    /// <param name="airC">Air, in °C. One per step. Range: −90 to 70.</param>
    /// <param name="windMs">Wind, in m/s. One per step. Range: 0 to 60.</param>
    /// <param name="origin">Where the figures come from, in words.</param>
    /// <exception cref="ArgumentException">A column has another length than the grid, or a value is outside its range; the message names the step.</exception>
    public static Weather OfParts(IntervalGrid grid, double[] globalWm2, double[] beamNormalWm2, double[] diffuseWm2, double[] airC, double[] windMs, string origin)
    {
        var plain = OfGlobal(grid, globalWm2, airC, windMs, origin);
        CheckColumn(grid, beamNormalWm2, "beam", 0, 1500, "W/m²");
        CheckColumn(grid, diffuseWm2, "diffuse", 0, 2000, "W/m²");
        for (var i = 0; i < diffuseWm2.Length; i++)
        {
            if (diffuseWm2[i] > globalWm2[i] + 1) throw Throw.DiffuseAboveGlobal(grid.StartOf(i), globalWm2[i], diffuseWm2[i]);
        }
        return new Weather(grid, globalWm2, beamNormalWm2, diffuseWm2, plain._airC, plain._windMs, origin);
    }

    /// <summary>A sky without clouds at every step: the most that a place gives, and the bound of what was curtailed.</summary>
    /// <param name="site">The site.</param>
    /// <param name="grid">The steps.</param>
    /// <param name="linkeTurbidity">Haze, see <see cref="ClearSky.At"/>. Default: 3.</param>
    /// <param name="heightM">Height above the sea, in metres. Default: 0.</param>
    /// <param name="airC">Air all along, in °C. Default: 15.</param>
    /// <param name="windMs">Wind all along, in m/s. Default: 1.</param>
    public static Weather Clear(Site site, IntervalGrid grid, double linkeTurbidity = 3, double heightM = 0, double airC = 15, double windMs = 1)
    {
        ArgumentNullException.ThrowIfNull(site);
        var (global, beam, diffuse) = (new double[grid.Count], new double[grid.Count], new double[grid.Count]);
        for (var i = 0; i < grid.Count; i++)
        {
            var sun = SolarCoordinates.At(grid.StartOf(i) + (grid.Step / 2));
            var clear = ClearSky.At(sun.DirectionFrom(site.LatitudeDeg, site.LongitudeDeg), sun.ExtraterrestrialNormalWm2, linkeTurbidity, heightM);
            (global[i], beam[i], diffuse[i]) = (clear.GlobalWm2, clear.BeamNormalWm2, clear.DiffuseWm2);
        }
        return OfParts(grid, global, beam, diffuse, Filled(airC, grid.Count), Filled(windMs, grid.Count), "clear sky at every step, air and wind held");
    }

    private static double[] Filled(double value, int count)
    {
        var column = new double[count];
        System.Array.Fill(column, value);
        return column;
    }

    private static void CheckColumn(IntervalGrid grid, double[] column, string name, double low, double high, string unit)
    {
        ArgumentNullException.ThrowIfNull(column, name);
        if (column.Length != grid.Count) throw Throw.WeatherColumnLength(name, column.Length, grid.Count);
        for (var i = 0; i < column.Length; i++)
        {
            if (!(column[i] >= low && column[i] <= high)) throw Throw.WeatherValue(name, grid.StartOf(i), column[i], low, high, unit);
        }
    }
}
