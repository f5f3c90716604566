using NodaTime;

namespace SolarEconomics.Charts.Tests;

/// <summary>Months of energy made up for the tests.</summary>
internal static class MonthSamples
{
    /// <summary>Three years: a battery from the second on, eleven days missing in one month, one month without any record.</summary>
    internal static IReadOnlyList<MonthOfEnergy> ThreeYears() =>
    [
        .. Enumerable.Range(0, 36).Where(i => i != 20).Select(i =>
        {
            var month = new YearMonth(2022, 3).PlusMonths(i);
            var sun = 420 + 330 * Math.Sin((month.Month - 3.5) / 12 * 2 * Math.PI);
            var battery = i >= 12 ? 0.22 : 0;
            var missing = i == 13 ? 264 : i == 6 ? 30 : 0;
            var share = 1 - missing / 720.0;
            return new MonthOfEnergy(month, sun * 0.34 * share, sun * battery * share, sun * (0.62 - battery) * share, sun * 0.04 * share,
                month.Month is 5 or 6 ? 9 : 0, (520 - sun * 0.3) * share, Money.Nominal(Math.Round((decimal)(sun * share * 0.21), 2), CashSamples.Euro), missing);
        }),
    ];
}
