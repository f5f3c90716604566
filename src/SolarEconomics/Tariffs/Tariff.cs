using NodaTime;

namespace SolarEconomics;

/// <summary>One version of a tariff: its parts, its tax, its clock and its rounding, in force from a day on.</summary>
/// <remarks>Prices are nominal and before tax. Immutable, so safe to share between threads; every method returns another tariff.
/// <code>Tariff.Flat("Standard", currency: "EUR", importPerKwh: 0.30m, supplyPerDay: 0.60m, exportPerKwh: 0.20m, tax: 0.09m, from: new LocalDate(2022, 1, 1))</code></remarks>
public sealed partial record Tariff
{
    private Tariff(string name, Currency currency, LocalDate from)
    {
        Name = name;
        Currency = currency;
        From = from;
    }

    /// <summary>Name of the tariff, as its sheet gives it.</summary>
    public string Name { get; init; }

    /// <summary>Currency of all its prices.</summary>
    public Currency Currency { get; }

    /// <summary>First billing day on which this version is in force.</summary>
    public LocalDate From { get; init; }

    /// <summary>The clock that its hours and days follow; <see langword="null"/> takes the clock that the bill is made with.</summary>
    public DateTimeZone? Zone { get; init; }

    /// <summary>Sales tax on its charges, as a fraction. Range: 0 to 1. Default: 0.</summary>
    public decimal Tax { get; init; }

    /// <summary>How it rounds. Default: half up on every line.</summary>
    public BillRounding Rounding { get; init; } = new();

    /// <summary>The seasons that its rates name. Default: none.</summary>
    public IReadOnlyList<TariffSeason> Seasons { get; init; } = [];

    /// <summary>The public holidays that it recognises. Default: none.</summary>
    public HolidayList Holidays { get; init; } = HolidayList.None;

    /// <summary>What a home needs to be given it. Default: nothing.</summary>
    public TariffNeeds Needs { get; init; }

    /// <summary>Whether it is closed to homes that do not have it yet. Default: no.</summary>
    public bool IsClosedToNew { get; init; }

    /// <summary>Minutes within which export is taken off import before pricing, as net billing does. Default: 0, never.
    /// A number of minutes that the readings divide; counted from the full hour.</summary>
    public int NetsWithinMinutes { get; init; }

    /// <summary>How the energy of a bill in which this version begins is split between it and the one before. Default: as metered.</summary>
    public EnergySplit EnergyAtChange { get; init; }

    /// <summary>Whether all use is bought and all generation sold, whatever flows through the meter. Default: no.
    /// It then needs <see cref="MeteredEnergy.UseKwh"/> and <see cref="MeteredEnergy.GenerationKwh"/>.</summary>
    public bool IsBuyAllSellAll { get; init; }

    /// <summary>Its parts, in the order of the bill.</summary>
    public IReadOnlyList<TariffPart> Parts { get; init; } = [];

    /// <summary>An empty tariff to be filled part by part, in the order of its sheet.</summary>
    /// <param name="name">Name of the tariff.</param>
    /// <param name="currency">ISO 4217 code.</param>
    /// <param name="from">First billing day of this version.</param>
    /// <exception cref="UnknownNameException">No such currency; the message names the nearest codes.</exception>
    public static Tariff Named(string name, string currency, LocalDate from)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(currency);
        return new Tariff(name, SolarEconomics.Currency.Of(currency), from);
    }

    /// <summary>A tariff of one import price, a supply charge per day and one price for export.</summary>
    /// <param name="name">Name of the tariff.</param>
    /// <param name="currency">ISO 4217 code.</param>
    /// <param name="importPerKwh">Price of import before tax, per kWh.</param>
    /// <param name="supplyPerDay">Supply charge before tax, per day. Default: 0.</param>
    /// <param name="exportPerKwh">Paid per kWh exported, free of tax. Default: 0.</param>
    /// <param name="tax">Sales tax on the charges as a fraction; 9 % is 0.09. Default: 0.</param>
    /// <param name="from">First billing day of this version.</param>
    /// <exception cref="UnknownNameException">No such currency.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The tax is not a fraction from 0 to 1.</exception>
    public static Tariff Flat(string name, string currency, decimal importPerKwh, decimal supplyPerDay = 0,
        decimal exportPerKwh = 0, decimal tax = 0, LocalDate from = default) =>
        Named(name, currency, from).SupplyPerDay(supplyPerDay).Import("import", importPerKwh).Export("export", exportPerKwh).Taxed(tax);

    /// <summary>Tax on one part as a fraction, by the part's own rule or the tariff's.</summary>
    /// <param name="part">A part of this tariff.</param>
    public decimal TaxOn(TariffPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        EnergySide? side = part switch { EnergyPart p => p.Side, SeriesPrice p => p.Side, EventCharge p => p.Side, _ => null };
        return part.TaxFraction ?? (side is EnergySide.Export or EnergySide.Curtailed ? 0m : Tax);
    }

    /// <summary>Whether it prices the controlled load's circuit apart; where not, that energy counts as import.</summary>
    public bool PricesControlledLoad => EnergyParts(EnergySide.ControlledLoad).Any();

    /// <summary>The parts that price one side's energy.</summary>
    /// <param name="side">Import or export.</param>
    public IEnumerable<EnergyPart> EnergyParts(EnergySide side) => Parts.OfType<EnergyPart>().Where(p => p.Side == side);

    /// <summary>Prints <c>Standard (EUR, from 2022-01-01)</c>.</summary>
    public override string ToString() => From <= TariffHistory.AllTime
        ? $"{Name} ({Currency}, for all time)"
        : $"{Name} ({Currency}, from {NodaTime.Text.LocalDatePattern.Iso.Format(From)})";
}
