using NodaTime;

namespace SolarEconomics;

/// <content>One price that stands for the tariff, and its prices scaled.</content>
public sealed partial record Tariff
{
    /// <summary>Price of import with tax at most hours of the week, per kWh, everything on top included.</summary>
    /// <remarks>For each part the rate that covers the most hours of a year; the rate named first where two cover as many. 0 without import.</remarks>
    public decimal StandardImportPerKwhWithTax => EnergyParts(EnergySide.Import).Sum(part => MostHours(part).PerKwh * (1 + TaxOn(part)));

    /// <summary>The rate that covers the most hours of a year, of the first part that prices import.</summary>
    /// <exception cref="TariffException">The tariff prices no import.</exception>
    public EnergyRate StandardImportRate =>
        EnergyParts(EnergySide.Import).FirstOrDefault() is { } part ? MostHours(part) : throw Throw.NoImport(this);

    /// <summary>The tariff with its prices scaled.</summary>
    /// <param name="importFactor">Factor on import prices.</param>
    /// <param name="exportFactor">Factor on prices paid for export.</param>
    /// <param name="supplyFactor">Factor on supply charges.</param>
    public Tariff Scaled(decimal importFactor, decimal exportFactor, decimal supplyFactor) => this with
    {
        Parts =
        [
            .. Parts.Select(part => part.Scaled(importFactor, exportFactor, supplyFactor)),
        ],
    };

    private EnergyRate MostHours(EnergyPart part)
    {
        var calendar = new DayCalendar(this);
        var table = new BandTable(part, calendar);
        var minutes = new int[256];
        // 2024 has 366 days, so every day of the year counts once.
        for (var day = new LocalDate(2024, 1, 1); day.Year == 2024; day = day.PlusDays(1))
        {
            var dayClass = calendar.ClassOf(day);
            for (var minute = 0; minute < BandTable.MinutesPerDay; minute = table.RunEnd(dayClass, minute))
                minutes[table.BandAt(dayClass, minute)] += table.RunEnd(dayClass, minute) - minute;
        }
        var most = 0;
        for (var rate = 1; rate < part.Rates.Count; rate++)
            if (minutes[rate] > minutes[most]) most = rate;
        return part.Rates[most];
    }
}
