using System.Globalization;

namespace SolarEconomics;

/// <summary>The words of the bridge of the value to date.</summary>
internal sealed class ToDateBridgeWords : IBridgeWords
{
    private readonly WorthToDate _worth;
    private readonly double _countedKwh;
    private readonly decimal _onePrice;
    private readonly CultureInfo _culture;

    internal ToDateBridgeWords(WorthToDate worth, double countedKwh, decimal onePrice, CultureInfo culture) =>
        (_worth, _countedKwh, _onePrice, _culture) = (worth, countedKwh, onePrice, culture);

    public string Label(CorrectionKind kind) => kind switch
    {
        CorrectionKind.MeasurementPoint => "Counted elsewhere",
        CorrectionKind.Destination => "Sold or lost, not used",
        CorrectionKind.Standby => "Standby",
        CorrectionKind.PriceInForce => "Prices then",
        CorrectionKind.Tax => "Tax reclaimed",
        _ => "Running costs",
    };

    public string Sentence(CorrectionKind kind, Money part)
    {
        var energy = _worth.Energy;
        var money = Wording.Signed(part, _culture);
        return kind switch
        {
            CorrectionKind.MeasurementPoint =>
                $"The displays add up to {Wording.Kwh(_countedKwh, _culture)}; {Wording.Kwh(energy.GeneratedKwh, _culture)} were made here and reached the board: {money}.",
            CorrectionKind.Destination =>
                $"{Wording.Kwh(energy.ExportedKwh, _culture)} were exported at the feed-in rate and {Wording.Kwh(energy.LostKwh, _culture)} lost; only the rest avoided a purchase: {money}.",
            CorrectionKind.Standby =>
                $"The plant itself took {Wording.Kwh(_worth.Flows.StandbyKwh.Sum(), _culture)}, bought or taken from its own generation: {money}.",
            CorrectionKind.PriceInForce =>
                $"The prices in force at each hour, instead of one price of {Wording.Price(Money.Nominal(_onePrice, _worth.Site.Currency), _culture)} a kWh for all time: {money}.",
            CorrectionKind.Tax =>
                $"Tax on {Wording.Percent(_worth.Site.TaxReclaimedShare, _culture)} of the use is reclaimed, so avoiding it saved nothing: {money}.",
            _ => $"Running, repairing and insuring the plant in the period: {money}.",
        };
    }

    public Finding Finding(Money start, Money end, IReadOnlyList<Correction> corrections)
    {
        var largest = corrections.MinBy(c => c.Part.Amount);
        var words = $"so far, where counters times one price say {Wording.Whole(start, _culture)}.";
        if (largest is not null && largest.Part.Amount < 0) words += " The largest correction: " + largest.Sentence;
        return new Finding(Wording.Whole(end, _culture), words)
        {
            Tables = [BridgeTable.Of("Value to date, one correction after another", start, end, corrections, "Payback at this pace, and open at the straight line's date", _culture)],
            Notes = ["Each correction is the difference of two full recomputations of every bill.", "Under each bar: the payback if the recorded years' pace went on, and what is still open on the day that the straight line calls paid back."],
            Cautions = [Cautions.Money],
        };
    }

    /// <summary>Where a value to date leaves the payback, at the recorded pace.</summary>
    internal string? Standing(uint subset, decimal value)
    {
        if (_worth.StraightLine is not { } line || line.Years <= 0) return null;
        return PaceOfPayback.Words(line.Cost, line.YearlyValue, Money.Nominal(value / (decimal)line.Years, line.Cost.Currency), _culture);
    }
}
