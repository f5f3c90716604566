using NodaTime;

namespace SolarEconomics;

/// <summary>What a model of a place makes of weather, as a reference beside sister arrays: before any clipping, so that an inverter at its limit is told apart from a shortfall.</summary>
internal sealed class ModelledReference
{
    private readonly IntervalGrid _grid;
    private readonly double[] _kwhPerKwp;
    private readonly double[] _planeKwhM2;

    private ModelledReference(GenerationResult result)
    {
        Result = result;
        _grid = result.Weather.Grid;
        var unclipped = result.UnclippedAcW();
        _kwhPerKwp = [.. unclipped.Select(w => w * _grid.StepHours / 1000 / result.Model.RatedKwp)];
        _planeKwhM2 = [.. result.PlaneWm2.ToArray().Select(w => w * _grid.StepHours / 1000)];
    }

    internal GenerationResult Result { get; }

    /// <summary>The arrays that stand behind a place on the record's last day, or stood there, worked through weather.</summary>
    internal static ModelledReference Of(OutputDays place, SiteRecords records, Weather weather, IReadOnlyList<ShadeEnvelope> shade, Ageing? ageing = null)
    {
        var device = place.Line[^1];
        var own = records.Site.Plant.Placements.Where(p => string.Equals(p.Device, device.Name, StringComparison.Ordinal)).ToList();
        if (own.Count == 0) throw Throw.NoArrays(device.Name);
        var day = place.Dates[^1];
        var standing = own.Where(p => p.StandsOn(day)).ToList();
        var model = PlantOutput.ModelOf(records.Site.Plant, device, standing.Count > 0 ? standing : own, day, new PlantOutputOptions { Shade = shade, Ageing = ageing });
        return new ModelledReference(model.Run(records.Site, weather));
    }

    /// <summary>Yield in an interval of the record, by the weather's step in which its middle falls. Unit: kWh/kWp.</summary>
    internal double? YieldIn(IntervalGrid record, int i) => StepOf(record, i) is { } step ? _kwhPerKwp[step] * (record.StepHours / _grid.StepHours) : null;

    /// <summary>Light on the planes in an interval of the record. Unit: kWh/m².</summary>
    internal double? PlaneIn(IntervalGrid record, int i) => StepOf(record, i) is { } step ? _planeKwhM2[step] * (record.StepHours / _grid.StepHours) : null;

    /// <summary>Yield of each whole day. Unit: kWh/kWp.</summary>
    internal Dictionary<LocalDate, double> Days(DateTimeZone zone) => ByDay(zone, _kwhPerKwp, values => values.Sum());

    /// <summary>Hottest air of each whole day. Unit: °C.</summary>
    internal Dictionary<LocalDate, double> HottestAirC(DateTimeZone zone) => ByDay(zone, Result.Weather.AirC.ToArray(), values => values.Max());

    private Dictionary<LocalDate, double> ByDay(DateTimeZone zone, double[] values, Func<IEnumerable<double>, double> of)
    {
        var local = _grid.LocalDays(zone);
        // The shortest day of a clock change has 23 hours.
        return Enumerable.Range(0, values.Length).GroupBy(i => local[i], i => values[i]).Where(g => g.Count() * _grid.StepHours >= 22.9).ToDictionary(g => g.Key, g => of(g));
    }

    private int? StepOf(IntervalGrid record, int i)
    {
        var step = (int)Math.Floor((record.StartOf(i) + (record.Step / 2) - _grid.Start) / _grid.Step);
        return step >= 0 && step < _grid.Count ? step : null;
    }
}
