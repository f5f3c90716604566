using NodaTime;

namespace SolarEconomics;

/// <summary>The use at which two tariffs cost the same, the household's import scaled as a whole.</summary>
/// <param name="Factor">What import is multiplied by.</param>
/// <param name="ImportKwh">Import at that point, over the days compared. Unit: kWh.</param>
/// <param name="CheaperBelow">Name of the tariff that is cheaper below it.</param>
/// <param name="CheaperAbove">Name of the tariff that is cheaper above it.</param>
public sealed record BreakEvenUse(double Factor, double ImportKwh, string CheaperBelow, string CheaperAbove)
{
    private const int Steps = 60;

    /// <summary>All points between none and three times the household's import at which two tariffs change places. Export stays as it is.</summary>
    /// <param name="first">One tariff.</param>
    /// <param name="second">Another, in the same currency.</param>
    /// <param name="grid">Intervals of the energy.</param>
    /// <param name="energy">Import and export in each.</param>
    /// <param name="zone">The clock of the rates, where a tariff names none.</param>
    /// <returns>The points, least use first; empty where one tariff is cheaper throughout.</returns>
    /// <remarks>Found on bills without rounding, in 60 steps and then by halving until a millionth of the import is left.</remarks>
    public static IReadOnlyList<BreakEvenUse> Between(TariffChoice first, TariffChoice second, IntervalGrid grid, MeteredEnergy energy, DateTimeZone zone)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        ArgumentNullException.ThrowIfNull(energy);
        var (a, b) = (Plan(first), Plan(second));
        var points = new List<BreakEvenUse>();
        for (var step = 0; step < Steps; step++)
        {
            var (low, high) = (3.0 * step / Steps, 3.0 * (step + 1) / Steps);
            var before = Difference(low);
            if (before == 0 || Math.Sign(before) == Math.Sign(Difference(high))) continue;
            while (high - low > 1e-6)
            {
                var middle = (low + high) / 2;
                if (Math.Sign(Difference(middle)) == Math.Sign(before)) low = middle;
                else high = middle;
            }
            points.Add(new BreakEvenUse(high, high * energy.ImportKwh.Sum(), before < 0 ? first.Name : second.Name, before < 0 ? second.Name : first.Name));
        }
        return points;

        BillingPlan Plan(TariffChoice choice) => TariffHistory.Of(choice.Tariffs.OnlyLatest().Latest.Rounded(RoundingMode.HalfUp, RoundingPlace.Nowhere)).On(grid, zone);

        decimal Difference(double factor)
        {
            var scaled = energy with { ImportKwh = [.. energy.ImportKwh.Select(k => k * factor)] };
            return a.Bills(scaled).Sum(bill => bill.Total.Amount) - b.Bills(scaled).Sum(bill => bill.Total.Amount);
        }
    }
}
