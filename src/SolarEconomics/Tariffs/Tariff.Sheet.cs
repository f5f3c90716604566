using NodaTime;

namespace SolarEconomics;

/// <content>Writing a tariff down in the order of its sheet.</content>
public sealed partial record Tariff
{
    /// <summary>With a supply charge per day.</summary>
    /// <param name="amount">Charge before tax for each billing day; 0 adds nothing.</param>
    /// <param name="name">Name on the bill.</param>
    public Tariff SupplyPerDay(decimal amount, string name = "supply charge") =>
        amount == 0 ? this : With(new SupplyCharge(Require.Given(name), amount));

    /// <summary>With a supply charge per calendar month; part of a month counts by its days.</summary>
    /// <param name="amount">Charge before tax for each month; 0 adds nothing.</param>
    /// <param name="name">Name on the bill.</param>
    public Tariff SupplyPerMonth(decimal amount, string name = "supply charge") =>
        amount == 0 ? this : With(new SupplyCharge(Require.Given(name), amount, ChargePeriod.Month));

    /// <summary>With a named season, half-open, which may run across the year's end.</summary>
    /// <param name="name">The name that rates refer to.</param>
    /// <param name="from">First month and day.</param>
    /// <param name="until">First month and day that no longer belong to it.</param>
    public Tariff Season(string name, (int Month, int Day) from, (int Month, int Day) until) =>
        this with { Seasons = [.. Seasons, new TariffSeason(Require.Given(name), new AnnualDate(from.Month, from.Day), new AnnualDate(until.Month, until.Day))] };

    /// <summary>With a price for import in some hours. The rates of a tariff together cover every hour once.</summary>
    /// <param name="name">Name on the bill.</param>
    /// <param name="perKwh">Price before tax, per kWh.</param>
    /// <param name="hours">Such as <c>17:00-19:00</c>; several parted by a comma; none means all hours that no other rate claims.</param>
    /// <param name="days">Kinds of day.</param>
    /// <param name="season">Name of a season; none means all year.</param>
    /// <exception cref="FormatException">The hours are not of that form.</exception>
    public Tariff Import(string name, decimal perKwh, string? hours = null, TariffDays days = TariffDays.EveryDay, string? season = null) =>
        WithRate(EnergySide.Import, Rate(Require.Given(name), perKwh, hours, days, season));

    /// <summary>With a further charge on every kWh imported, such as a levy or the energy's own cost.</summary>
    /// <param name="name">Name on the bill.</param>
    /// <param name="perKwh">Price before tax, per kWh.</param>
    public Tariff ImportOnTop(string name, decimal perKwh) =>
        With(new EnergyPart(name, EnergySide.Import, [EnergyRate.Flat(name, perKwh)]));

    /// <summary>With a price for the controlled load's own circuit in some hours.</summary>
    /// <param name="name">Name on the bill.</param>
    /// <param name="perKwh">Price before tax, per kWh.</param>
    /// <param name="hours">Such as <c>22:00-07:00</c>; none means all hours that no other rate claims.</param>
    /// <param name="days">Kinds of day.</param>
    /// <param name="season">Name of a season; none means all year.</param>
    /// <exception cref="FormatException">The hours are not of that form.</exception>
    public Tariff ControlledLoad(string name, decimal perKwh, string? hours = null, TariffDays days = TariffDays.EveryDay, string? season = null) =>
        WithRate(EnergySide.ControlledLoad, Rate(Require.Given(name), perKwh, hours, days, season));

    /// <summary>With a price paid for export in some hours.</summary>
    /// <param name="name">Name on the bill.</param>
    /// <param name="perKwh">Paid per kWh.</param>
    /// <param name="hours">Such as <c>10:00-16:00</c>; none means all hours that no other rate claims.</param>
    /// <param name="days">Kinds of day.</param>
    /// <param name="season">Name of a season; none means all year.</param>
    /// <exception cref="FormatException">The hours are not of that form.</exception>
    public Tariff Export(string name, decimal perKwh, string? hours = null, TariffDays days = TariffDays.EveryDay, string? season = null) =>
        WithRate(EnergySide.Export, Rate(Require.Given(name), perKwh, hours, days, season));

    /// <summary>With a sales tax on its charges.</summary>
    /// <param name="fraction">9 % is 0.09. Range: 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public Tariff Taxed(decimal fraction) => this with { Tax = (decimal)Require.Fraction((double)fraction) == 0 ? 0 : fraction };

    /// <summary>With the clock that its hours and days follow.</summary>
    /// <param name="zone">IANA name, for example <c>Europe/Dublin</c>.</param>
    /// <exception cref="UnknownNameException">No such zone.</exception>
    public Tariff OnClock(string zone) => this with { Zone = Require.Zone(Require.Given(zone)) };

    /// <summary>With a rounding rule.</summary>
    /// <param name="mode">What happens to the part below the last digit.</param>
    /// <param name="place">What is rounded.</param>
    public Tariff Rounded(RoundingMode mode, RoundingPlace place = RoundingPlace.Line) =>
        this with { Rounding = Rounding with { Mode = mode, Place = place } };

    /// <summary>With public holidays of its own, which count as <see cref="TariffDays.Holidays"/> and no longer as their weekday.</summary>
    /// <param name="days">The dated days.</param>
    public Tariff HolidaysOn(params IEnumerable<LocalDate> days) => this with { Holidays = HolidayList.Of(Holidays.Days.Concat(Require.Given(days))) };

    /// <summary>With one more part.</summary>
    /// <param name="part">The part, last on the bill.</param>
    public Tariff With(TariffPart part) => this with { Parts = [.. Parts, Require.Given(part)] };

    private Tariff WithRate(EnergySide side, EnergyRate rate)
    {
        var name = PartNameOf(side);
        var index = Parts.ToList().FindIndex(p => p is EnergyPart e && e.Side == side && string.Equals(e.Name, name, StringComparison.Ordinal));
        if (index < 0) return With(new EnergyPart(name, side, [rate]));
        var part = (EnergyPart)Parts[index];
        return this with { Parts = [.. Parts.Take(index), part with { Rates = [.. part.Rates, rate] }, .. Parts.Skip(index + 1)] };
    }

    internal static string PartNameOf(EnergySide side) => side switch
    {
        EnergySide.Import => "import",
        EnergySide.Export => "export",
        EnergySide.ControlledLoad => "controlled load",
        _ => "curtailed",
    };

    private static EnergyRate Rate(string name, decimal perKwh, string? hours, TariffDays days, string? season)
    {
        if (hours is null && days == TariffDays.EveryDay && season is null) return EnergyRate.Flat(name, perKwh);
        HourSpan[] spans = hours is null ? [HourSpan.WholeDay] : [.. hours.Split(',').Select(HourSpan.Parse)];
        return new EnergyRate(name, perKwh, [new RateWindow(season, days, spans)]);
    }
}
