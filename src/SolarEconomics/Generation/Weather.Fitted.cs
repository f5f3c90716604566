using NodaTime;

namespace SolarEconomics;

/// <summary>Weather that a plant's own record implies.</summary>
public sealed partial class Weather
{
    private const double LeastScale = 0.02;
    private const double MostScale = 3;

    /// <summary>The same weather made brighter or duller month by month until a model of the recorded plant makes what the record says: records instead of weather, hour by hour.</summary>
    /// <param name="site">The site, for its clock.</param>
    /// <param name="record">Specific yield of the recorded plant; months that it cannot tell take the mean change of those that it can.</param>
    /// <param name="model">Model of the recorded plant, aged as it was.</param>
    /// <returns>Global, air and wind; beam and diffuse follow by <see cref="Decomposition"/>.</returns>
    /// <remarks>Only the light is moved, so whatever else the model has wrong (dirt, shade) is laid on the light too: right for comparing plants on like faces, not for judging the sky.
    /// Days inside a month keep the order that the weather had. Equation: for each month the factor f with Σ AC(f · global) = record, by bisection.</remarks>
    /// <exception cref="ArgumentException">The record tells no month, or no factor from 0.02 to 3 gives what it says.</exception>
    public Weather FittedTo(Site site, SpecificYield record, GenerationModel model)
    {
        ArgumentNullException.ThrowIfNull(site);
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(model);
        if (record.Months.Count == 0) throw Throw.NoMonthTold(record.Origin);
        var months = MonthOfSteps(site);
        var most = AboveAtmosphereOnLevel(site);
        var wanted = new double?[12];
        foreach (var month in record.Months) wanted[month.Month - 1] = month.MeanKwhPerKwp * model.RatedKwp;
        var (low, high) = (Twelve(LeastScale), Twelve(MostScale));
        Check(wanted, KwhByMonth(Scaled(high, months, most), model, site, months), KwhByMonth(Scaled(low, months, most), model, site, months));
        for (var round = 0; round < 45; round++)
        {
            var middle = new double[12];
            for (var m = 0; m < 12; m++) middle[m] = (low[m] + high[m]) / 2;
            var made = KwhByMonth(Scaled(middle, months, most), model, site, months);
            for (var m = 0; m < 12; m++)
            {
                if (made[m] < wanted[m]) low[m] = middle[m];
                else high[m] = middle[m];
            }
        }
        var mean = record.Months.Average(m => high[m.Month - 1]);
        for (var m = 0; m < 12; m++)
            if (wanted[m] is null) high[m] = mean;
        return Scaled(high, months, most, $"{Origin}; light moved month by month to what {record.Origin} says", record.IsLowerBound
            ? "days held back by a full battery, a limit or a trip are sunny ones and are left out of the record's yield" : LowerBoundWhy);
    }

    /// <summary>No step gets more light than stands above the atmosphere, or the sun near the horizon would be split into a beam that no sky has.</summary>
    private Weather Scaled(double[] factors, int[] months, double[] most, string origin = "", string? lowerBoundWhy = null)
    {
        var global = new double[Grid.Count];
        for (var i = 0; i < global.Length; i++) global[i] = Math.Min(most[i], _globalWm2[i] * factors[months[i]]);
        return new Weather(Grid, global, null, null, _airC, _windMs, origin) { LowerBoundWhy = lowerBoundWhy };
    }

    private static double[] KwhByMonth(Weather weather, GenerationModel model, Site site, int[] months)
    {
        var sums = new double[12];
        var acW = model.Run(site, weather).AcW;
        for (var i = 0; i < acW.Length; i++) sums[months[i]] += acW[i] * weather.Grid.StepHours / 1000;
        return sums;
    }

    private int[] MonthOfSteps(Site site)
    {
        var months = new int[Grid.Count];
        for (var i = 0; i < months.Length; i++) months[i] = (Grid.StartOf(i) + (Grid.Step / 2)).InZone(site.Zone).Month - 1;
        return months;
    }

    private double[] AboveAtmosphereOnLevel(Site site)
    {
        var most = new double[Grid.Count];
        for (var i = 0; i < most.Length; i++)
        {
            var sun = SolarCoordinates.At(Grid.StartOf(i) + (Grid.Step / 2));
            most[i] = sun.ExtraterrestrialNormalWm2 * Math.Max(Decomposition.LowestCosZenith, sun.DirectionFrom(site.LatitudeDeg, site.LongitudeDeg).Up);
        }
        return most;
    }

    private static double[] Twelve(double value)
    {
        var months = new double[12];
        Array.Fill(months, value);
        return months;
    }

    private static void Check(double?[] wanted, double[] most, double[] least)
    {
        for (var m = 0; m < 12; m++)
            if (wanted[m] is { } kwh && !(kwh >= least[m] && kwh <= most[m])) throw Throw.MonthNotReached(m + 1, kwh, least[m], most[m]);
    }
}
