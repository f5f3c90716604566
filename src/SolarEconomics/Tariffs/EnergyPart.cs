namespace SolarEconomics;

/// <summary>Energy priced per kWh by rates that together cover every hour once.</summary>
/// <param name="Name">Name of the part.</param>
/// <param name="Side">Import and controlled load are charged, export and curtailed energy are credited.</param>
/// <param name="Rates">1 to 250 rates; at most one without windows, which takes the remaining hours.</param>
public sealed record EnergyPart(string Name, EnergySide Side, IReadOnlyList<EnergyRate> Rates) : TariffPart(Name)
{
    /// <summary>What the metered kWh are multiplied by before pricing: 1.0376 with losses on top, 0.0376 for the losses alone. Default: 1.</summary>
    public decimal QuantityFactor { get; init; } = 1;

    /// <summary>Digits to which the kWh are rounded, half up, before pricing; <see langword="null"/> keeps them all.</summary>
    public int? QuantityDigits { get; init; }

    /// <summary>Highest mean power of an interval that is priced; energy above it is taken or sent without price, as at an export limit. Unit: kW.
    /// Default: <see langword="null"/>, none.</summary>
    public decimal? MostKw { get; init; }

    internal override SegmentPart On(SegmentContext context) => new SegmentEnergy(this, context);

    internal override IEnumerable<TariffMistake> Mistakes(Tariff tariff, DayCalendar calendar)
    {
        if (Rates.Count is 0 or > TariffCheck.MostRates) return [Throw.RateCount(tariff, this)];
        var mistakes = Rates.Where(r => r.Blocks is { AreInOrder: false }).Select(r => Throw.BlocksOutOfOrder(tariff, this, r)).ToList();
        mistakes.AddRange(Rates.Where(r => r.Blocks is { CanRunOn: false }).Select(r => Throw.BlocksCannotRunOn(tariff, this, r)));
        if (Rates.Count(r => r.IsOtherwise) > 1) mistakes.Add(Throw.TwoRests(tariff, this));
        var seasons = tariff.Seasons.Select(s => s.Name).ToList();
        var unknown = Rates.SelectMany(r => r.Windows).Select(w => w.Season).OfType<string>()
            .Where(s => !seasons.Contains(s, StringComparer.Ordinal)).Distinct(StringComparer.Ordinal).ToList();
        mistakes.AddRange(unknown.Select(season => Throw.UnknownSeason(tariff, Name, season, seasons)));
        // Hours of a season that does not exist would be reported as uncovered: one mistake, not two.
        if (unknown.Count == 0) mistakes.AddRange(new BandTable(this, calendar).Mistakes.Select(m => Throw.Coverage(tariff, this, m)));
        return mistakes;
    }

    internal override TariffPart Scaled(decimal importFactor, decimal exportFactor, decimal supplyFactor) =>
        this with { Rates = [.. Rates.Select(r => r.Scaled(Side.IsCharge() ? importFactor : exportFactor))] };
}
