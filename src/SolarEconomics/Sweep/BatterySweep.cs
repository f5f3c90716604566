namespace SolarEconomics;

/// <summary>Thousands of futures of one battery behind the same sun, use and prices: self-consumption, AC-coupled, without grid limits and outages.</summary>
/// <remarks>What this plant lacks (DC arrays, tapers, limits, generator, other controls) is answered by <see cref="EnergySystem.Run"/>, to which its results are equal
/// to 1e-9 where both apply. Immutable, so safe to share between threads.</remarks>
public sealed partial class BatterySweep
{
    private readonly SweepSeries _series;
    private readonly double[] _hours;
    private readonly bool _repeatsAny;

    private BatterySweep(Conditions conditions, bool repeatsAny)
    {
        _repeatsAny = repeatsAny;
        ConditionsCheck.Demand(new EnergySystem(), conditions);
        if (conditions.Arrays.Any(a => a.Coupling is not Coupling.Ac)) throw Throw.NotInASweep("a DC-coupled array");
        if (!conditions.MostExportKw.IsEmpty) throw Throw.NotInASweep(nameof(Conditions.MostExportKw));
        if (!conditions.GridIsOut.IsEmpty) throw Throw.NotInASweep(nameof(Conditions.GridIsOut));
        if (conditions.Deferrable.Count > 0) throw Throw.NotInASweep(nameof(Conditions.Deferrable));
        _hours = conditions.Time.HoursArray;
        if (Array.Exists(_hours, h => h != _hours[0])) throw Throw.NotInASweep("a time line of mixed intervals");
        var supply = BusSupply.Of(conditions);
        _series = SweepSeries.Of(supply.AcKwh, conditions.Load.TotalArray, conditions.ImportPricePerKwh.Span, conditions.ExportPricePerKwh.Span, _hours[0]);
    }

    /// <summary>A sweep over the conditions of one year; each further year repeats it.</summary>
    /// <param name="conditions">Sun, use and prices; empty prices count as 0.</param>
    /// <exception cref="ArgumentException">The conditions hold what a sweep does not know, or a series has a mistake.</exception>
    public static BatterySweep Of(Conditions conditions)
    {
        ArgumentNullException.ThrowIfNull(conditions);
        return new BatterySweep(conditions, repeatsAny: false);
    }

    /// <summary>A sweep that repeats any span as if it were a year, for tests that look at every interval by another way.</summary>
    internal static BatterySweep OfAnySpan(Conditions conditions) => new(conditions, repeatsAny: true);

    private void DemandYear(int years)
    {
        var days = BandSums.Total(_hours) / 24;
        if (years > 1 && !_repeatsAny && days is (< 364 or > 367)) throw Throw.SweepNeedsAYear(days, years);
    }

    /// <summary>The first year of one case, interval by interval.</summary>
    /// <param name="case">The case.</param>
    public BatteryTrace Trace(BatteryCase @case)
    {
        var trace = BatteryTrace.For(_hours.Length);
        Trace(@case, trace);
        return trace;
    }

    /// <summary>The first year of one case into columns of the caller, so that a moving slider allocates nothing where the case scales neither sun nor use.</summary>
    /// <param name="case">The case.</param>
    /// <param name="into">Columns with one value per interval.</param>
    /// <exception cref="ArgumentException">A column has another length.</exception>
    public void Trace(BatteryCase @case, BatteryTrace into)
    {
        ArgumentNullException.ThrowIfNull(@case);
        ArgumentNullException.ThrowIfNull(into);
        foreach (var column in (ReadOnlySpan<double[]>)[into.ImportKwh, into.ExportKwh, into.StoredKwh])
            if (column.Length != _hours.Length) throw Throw.SeriesLength("a trace", column.Length, _hours.Length);
        var standbyKwh = @case.Battery.StandbyW / 1000 * _series.StepHours;
        var (sun, use) = (_series.SunKwh, _series.UseKwh);
        if (@case.SunScale != 1) sun = [.. sun.Select(kwh => kwh * @case.SunScale)];
        if (@case.UseScale != 1 || standbyKwh != 0) use = [.. use.Select(kwh => (kwh * @case.UseScale) + standbyKwh)];
        BatteryLoop.Run(sun, use, _series.StepHours, BatteryNumbers.Of(@case), into);
    }
}
