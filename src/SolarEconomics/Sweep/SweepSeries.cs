namespace SolarEconomics;

/// <summary>What all cases of a sweep share.</summary>
/// <param name="SunKwh">Generation at the board, one value per interval.</param>
/// <param name="UseKwh">Wanted use, one value per interval.</param>
/// <param name="Hours">The same with prices, interval by interval.</param>
/// <param name="StepHours">The one length of the intervals.</param>
internal sealed record SweepSeries(double[] SunKwh, double[] UseKwh, SweepHour[] Hours, double StepHours)
{
    /// <summary>Sum of the generation.</summary>
    internal double TotalSunKwh { get; } = BandSums.Total(SunKwh);

    /// <summary>Sum of the wanted use.</summary>
    internal double TotalUseKwh { get; } = BandSums.Total(UseKwh);

    internal static SweepSeries Of(double[] sunKwh, double[] useKwh, ReadOnlySpan<double> importPrices, ReadOnlySpan<double> exportPrices, double stepHours)
    {
        var hours = new SweepHour[sunKwh.Length];
        for (var i = 0; i < hours.Length; i++)
        {
            var paid = exportPrices.IsEmpty ? 0 : exportPrices[i];
            hours[i] = new SweepHour(sunKwh[i], useKwh[i], (importPrices.IsEmpty ? 0 : importPrices[i]) - paid, paid);
        }
        return new SweepSeries(sunKwh, useKwh, hours, stepHours);
    }
}
