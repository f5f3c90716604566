using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>What a generator gave, told from its fuel and hours as a range, and what a kWh of it cost.</summary>
/// <param name="Period">From the day of the first row to that of the last.</param>
/// <param name="Hours">Hours that it ran. Unit: h.</param>
/// <param name="Starts">Starts counted.</param>
/// <param name="LowLitres">Least fuel burned. Unit: litres.</param>
/// <param name="HighLitres">Most fuel burned. Unit: litres.</param>
/// <param name="Kwh">Energy at its terminals.</param>
/// <param name="FuelAndOil">What the fuel filled in and the oil cost.</param>
/// <param name="UnpricedLitres">Fuel filled in without a price, which is in the energy and not in the money. Unit: litres.</param>
/// <param name="FuelLineDoubt">By which share the engine may differ from its fuel line.</param>
public sealed record GeneratorEnergy(
    DateSpan Period, double Hours, double Starts, double LowLitres, double HighLitres, EnergyRange Kwh, Money FuelAndOil, double UnpricedLitres, double FuelLineDoubt) : IFinding
{
    /// <summary>Lowest cost of a kWh at the generator's terminals: the most energy; <see langword="null"/> where it may have given none.</summary>
    public Money? LowPricePerKwh => Kwh.HighKwh > 0 ? FuelAndOil * (decimal)(1 / Kwh.HighKwh) : null;

    /// <summary>Highest cost of a kWh at the generator's terminals; <see langword="null"/> where it may have given none.</summary>
    public Money? HighPricePerKwh => Kwh.LowKwh > 0 ? FuelAndOil * (decimal)(1 / Kwh.LowKwh) : null;

    internal static GeneratorEnergy Of(GeneratorLog log, Generator generator, Currency currency, double doubt, double tankLitres)
    {
        var later = log.Entries.Skip(1).ToList();
        var litres = later.Sum(e => e.Litres);
        // A tank that was not full at the start held less, so less was burned of what came later; at the end it is the other way about.
        var low = Math.Max(0, litres - (log.Entries[0].IsFull ? 0 : tankLitres));
        var high = litres + (log.Entries[^1].IsFull ? 0 : tankLitres);
        var idle = generator.Fuel.IdleLitresPerHourPerKw * generator.RatedKw * log.Hours;
        var mostKwh = generator.RatedKw * log.Hours;
        double At(double burned) => generator.Fuel.LitresPerKwh > 0 ? (burned - idle) / generator.Fuel.LitresPerKwh : 0;
        var (lowKwh, highKwh) = generator.Fuel.LitresPerKwh > 0 ? (At(low / (1 + doubt)), At(high / (1 - doubt))) : (0, mostKwh);
        if (lowKwh > mostKwh || highKwh < 0)
            throw Throw.FuelAgainstHours(litres, log.Hours, idle * (1 - doubt), generator.Fuel.Litres(generator.RatedKw, log.Hours, mostKwh) * (1 + doubt));
        var money = later.Sum(e => (e.Litres * (e.PricePerLitre ?? 0)) + (e.OilLitres * e.OilPricePerLitre));
        return new GeneratorEnergy(new DateSpan(log.Entries[0].Date, log.Entries[^1].Date), log.Hours, log.Starts, low, high,
            new EnergyRange(Math.Max(0, lowKwh), Math.Min(mostKwh, highKwh)), Money.Nominal(Math.Round((decimal)money, 2), currency),
            later.Where(e => e.PricePerLitre is null).Sum(e => e.Litres), doubt);
    }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        var litres = Math.Abs(HighLitres - LowLitres) < 0.05 ? HighLitres.ToString("#,0", culture) : $"{LowLitres.ToString("#,0", culture)} to {HighLitres.ToString("#,0", culture)}";
        var price = FuelAndOil.Amount > 0 && (LowPricePerKwh, HighPricePerKwh) is ({ } low, { } high)
            ? $" A kWh of it cost {(UnpricedLitres > 0 ? "at least " : "")}{Wording.Exact(low, culture)} to {Wording.Exact(high, culture)} in fuel and oil."
            : " What a kWh of it cost cannot be told.";
        return new Finding($"{Kwh.LowKwh.ToString("#,0", culture)} to {Wording.Kwh(Kwh.HighKwh, culture)}",
            $"is what the generator gave in {Hours.ToString("#,0", culture)} hours with {litres} litres, {Wording.Days(Period, culture)}.{price}")
        {
            Notes =
            [
                $"No meter counted it: the range follows from fuel and hours, with {Wording.Percent(FuelLineDoubt, culture)} of doubt about the fuel line.",
                "At its terminals. What charger and battery lose makes a kWh at the socket dearer; overhaul and own hours are not in it.",
                .. UnpricedLitres > 0 ? [$"{UnpricedLitres.ToString("#,0", culture)} litres have no price: the cost is at least this."] : Array.Empty<string>(),
            ],
            Cautions = [SolarEconomics.Cautions.Backup],
        };
    }
}
