using NodaTime;

namespace SolarEconomics;

/// <summary>Prices what a day lost: its energy is laid on the hours in which the place usually makes it.</summary>
internal sealed class LossPrices
{
    private readonly SiteRecords _records;
    private readonly EvidencePrices? _prices;
    private readonly Dictionary<(int Month, int Minute), double> _usual;
    private readonly Dictionary<LocalDate, (int From, int To)> _days = [];

    internal LossPrices(GenerationRecord place, SiteRecords records, TariffHistory? tariffs)
    {
        _records = records;
        _prices = tariffs is null ? null : WorthToDate.PricesOf(tariffs.On(records.Grid, records.Site.Zone), records, records.Site);
        for (var from = 0; from < records.Grid.Count;)
        {
            var to = from;
            while (to < records.Grid.Count && records.Days[to] == records.Days[from]) to++;
            _days[records.Days[from]] = (from, to);
            from = to;
        }
        _usual = _prices is null ? [] : Enumerable.Range(0, records.Grid.Count).Where(i => place.Series.Known[i])
            .GroupBy(Slot).ToDictionary(g => g.Key, g => g.Average(i => place.Series.Kwh[i]));
    }

    /// <summary>Worth of a day's lost energy: by its hours where import is known, and the two ends.</summary>
    internal (decimal? Value, decimal AllExported, decimal AllUsed)? Of(LocalDate date, double kwh)
    {
        if (_prices is null || !_days.TryGetValue(date, out var day)) return null;
        double[] shape = [.. Enumerable.Range(day.From, day.To - day.From).Select(i => _usual.GetValueOrDefault(Slot(i)))];
        var whole = shape.Sum();
        if (!(whole > 0)) return null;
        var (sum, isKnown) = (default(ExtraEnergy), true);
        for (var i = day.From; i < day.To; i++)
        {
            var lost = kwh * shape[i - day.From] / whole;
            isKnown &= lost == 0 || (_records.Import is { } import && import.Known[i]);
            sum = sum.Plus(ExtraEnergy.Of(_records.Grid.StepHours, lost, _records.Import?.Kwh[i] ?? 0, _records.Export?.Kwh[i] ?? 0, _prices.Import[i], _prices.Export[i]));
        }
        var (exported, used) = ((decimal)sum.IfAllExported, (decimal)sum.IfAllUsed);
        return (isKnown ? (decimal)(sum.Avoided + sum.FeedIn) : null, Math.Min(exported, used), Math.Max(exported, used));
    }

    private (int Month, int Minute) Slot(int interval)
    {
        var local = _records.Grid.StartOf(interval).InZone(_records.Site.Zone);
        return (local.Month, (local.Hour * 60) + local.Minute);
    }
}
