namespace SolarEconomics;

/// <summary>Import less export is charged; what is left over is banked in kWh and lowers later bills, rate by rate.</summary>
/// <param name="Name">Name of the part.</param>
/// <param name="Rates">Rates for import and export alike; together they cover every hour once.</param>
/// <param name="SettlesInMonth">Month at whose first bill the bank is emptied, 1 to 12; <see langword="null"/>: never.</param>
/// <param name="CashOutPerKwh">Paid for each kWh that is emptied, free of tax; 0: it expires.</param>
public sealed record NetMetering(string Name, IReadOnlyList<EnergyRate> Rates, int? SettlesInMonth = null, decimal CashOutPerKwh = 0) : TariffPart(Name)
{
    /// <summary>Months after which banked energy is lost, counted from the first day of its bill; <see langword="null"/>: never.</summary>
    public int? ExpiresAfterMonths { get; init; }

    internal EnergyPart Energy { get; } = new(Name, EnergySide.Import, Rates);

    internal override SegmentPart On(SegmentContext context) => new SegmentNet(this, context);

    internal override IEnumerable<TariffMistake> Mistakes(Tariff tariff, DayCalendar calendar) => Energy.Mistakes(tariff, calendar)
        .Concat(Rates.Where(r => r.Blocks is not null).Select(r => Throw.BlocksInNetMetering(tariff, this, r)));

    internal override TariffPart Scaled(decimal importFactor, decimal exportFactor, decimal supplyFactor) =>
        new NetMetering(Name, [.. Rates.Select(r => r.Scaled(importFactor))], SettlesInMonth, CashOutPerKwh * exportFactor) { TaxFraction = TaxFraction, ExpiresAfterMonths = ExpiresAfterMonths };
}
