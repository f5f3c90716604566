using NodaTime;

namespace SolarEconomics;

/// <summary>How expected is set against measured.</summary>
public sealed partial class ExpectedAgainstMeasured
{
    private const double NormalNinetyFive = 1.959963984540054;
    private const int DaysBeforeReceipt = 10;
    private const int DaysAfterReceipt = 60;

    /// <summary>Sets what one place made against what its sister arrays, and the weather where it is given, let expect.</summary>
    /// <param name="site">The site with its plant: which device took over from which, and the rated power of each day.</param>
    /// <param name="readings">Interval generation of at least two places, or of one beside weather.</param>
    /// <param name="device">Name of the device at work there last, or of one before it.</param>
    /// <param name="options">Tariffs, receipts, weather and what counts as short.</param>
    /// <exception cref="UnknownNameException">No generation of that name is on record.</exception>
    /// <exception cref="ArgumentException">Nothing can be a reference: no sister array shares 60 whole days, and no weather is given.</exception>
    public static ExpectedAgainstMeasured Of(Site site, Readings readings, string device, LossOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(site);
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(device);
        options ??= new LossOptions();
        var records = SiteRecords.Lay(site, readings);
        var all = records.Generation.Where(g => g.Series.KnownTotalKwh > 0).Select(g => new PlaceOfOutput(g, records)).ToList();
        var own = all.Find(p => p.Days.Line.Any(d => string.Equals(d.Name, device, StringComparison.Ordinal))) ?? throw Throw.UnknownDevice(device, all.Select(p => p.Days.Name));
        var (places, place) = (all.ConvertAll(p => p.Days), own.Days);
        var weather = options.Weather is { } sky ? ModelledReference.Of(place, records, sky, options.Shade) : null;
        foreach (var p in all)
        {
            p.AtLimit.Estimate([.. all.Where(o => o != p).Select(o => (Func<int, double?>)o.AtLimit.Free), .. p == own && weather is not null ? [i => weather.YieldIn(records.Grid, i)] : Array.Empty<Func<int, double?>>()]);
            p.Days.AddClipped(records, p.AtLimit);
        }
        var heldBack = MarkedDays(records, own.Record, place, options.ExportLimitKw);
        var references = places.Where(p => p != place).ToList();
        if (weather is not null) references.Add(OutputDays.Of(weather, records));
        // A sister that failed must not drag the expectation down: first each place is judged by all others, then their failed days are set aside.
        var failed = places.ToDictionary(p => p.Name, p => new bool[p.Dates.Length], StringComparer.Ordinal);
        var none = new bool[place.Dates.Length];
        foreach (var other in places)
            MarkFailed(other, Judge(other, places.Where(p => p != other).Concat(references.Where(r => r.IsWeather)), r => r.IsWeather ? heldBack : none, options, site, weather), failed[other.Name]);
        // The sky knows nothing of a full battery, sisters do: on days held back it is no reference.
        var judged = Judge(place, references, p => p.IsWeather ? heldBack : failed.GetValueOrDefault(p.Name, none), options, site, weather);
        if (judged.Models.Count == 0) throw Throw.NoReference(place.Name);
        var prices = new LossPrices(own.Record, records, options.Tariffs);
        var events = judged.Found.Select(s => EventOf(s, FailedDays(s, judged), place, judged, prices, options, site))
            .Concat(Clipping(place, own.AtLimit).Select(c => EventOf(c.Found, c.Days, place, judged, prices, options, site)))
            .Concat(Curtailment(place, judged, heldBack).Select(c => EventOf(c.Found, c.Days, place, judged, prices, options, site)))
            .OrderBy(e => e.Shortfall.Days.Start);
        return new ExpectedAgainstMeasured(site, place.Name, Shown(place, judged, heldBack), [.. events])
        {
            References = [.. judged.Models.Select(m => FormattableString.Invariant($"{m.Name}, fitted on {m.Days} days, a day scatters by {m.Scatter:0.00} kWh/kWp"))],
            ScatterKwhPerKwp = judged.Models.Min(m => m.Scatter),
            HoursAtLimit = place.HoursAtLimit.Sum(),
            UntoldHoursAtLimit = Enumerable.Range(0, own.AtLimit.IsAt.Length).Count(i => own.AtLimit.IsAt[i] && own.AtLimit.Kwh[i] is null) * records.Grid.StepHours,
            HeldBackDays = heldBack.Count(h => h),
            TellsCurtailment = judged.Models.Any(m => m.Reference.IsWeather),
            Yields = weather is null ? null : YieldsOf(records, own.Record, weather, options.ExportLimitKw),
            HeatFactor = weather?.Result.HeatFactor ?? 1,
        };
    }

    private sealed record Judgement(IReadOnlyList<OwnModel> Models, IReadOnlyList<DayOfOutput> Days, IReadOnlyList<Shortfall> Found);

    private static Judgement Judge(OutputDays place, IEnumerable<OutputDays> references, Func<OutputDays, bool[]> failedOf, LossOptions options, Site site, ModelledReference? weather)
    {
        var none = new bool[place.Dates.Length];
        var fitted = references.Select(r => (Failed: failedOf(r), Model: OwnModel.Fit(place, r, none, failedOf(r)))).Where(f => f.Model is not null).ToList();
        var hottest = weather?.HottestAirC(site.Zone);
        var days = place.Dates.Select((date, d) => new DayOfOutput(date, place.Kwh[d], (Expected(d) ?? 0) * place.Kwp[d], hottest?.TryGetValue(date, out var airC) == true ? airC : null, ClippedKwh: place.ClippedKwh[d])).ToList();
        var scatter = fitted.Count == 0 ? 0 : fitted.Min(f => f.Model!.Scatter);
        var found = fitted.Count == 0 ? [] : Shortfalls.Find(days, date => StringsOn(place, date, site), options.ShortBelow, options.FewestDays)
            .Where(s => s.LostKwh > NormalNinetyFive * scatter * Math.Sqrt(s.Days.Days) * KwpOn(place, s.Days.Start)).ToList();
        return new Judgement([.. fitted.Select(f => f.Model!)], days, found);

        // References count by how closely they foretell.
        double? Expected(int day)
        {
            var (sum, weights) = (0.0, 0.0);
            foreach (var (failed, model) in fitted)
            {
                if (model!.Expected(day, failed) is not { } yield) continue;
                var weight = 1 / Math.Max(model.Scatter * model.Scatter, 1e-6);
                (sum, weights) = (sum + (weight * yield), weights + weight);
            }
            return weights > 0 ? sum / weights : null;
        }
    }

    private static void MarkFailed(OutputDays place, Judgement judged, bool[] failed)
    {
        foreach (var span in judged.Found.Select(s => s.Days))
            for (var d = 0; d < failed.Length; d++) failed[d] |= span.Contains(place.Dates[d]);
    }

    /// <summary>Strings that could each drop out; 1 where the plant's arrays are not described.</summary>
    private static int StringsOn(OutputDays place, LocalDate date, Site site) => Math.Max(1, StandingBehind(place, date, site).Sum(p => p.Array.Strings));

    private static IEnumerable<Placement> StandingBehind(OutputDays place, LocalDate date, Site site) =>
        site.Plant.Placements.Where(p => p.StandsOn(date) && place.Line.Any(d => string.Equals(d.Name, p.Device, StringComparison.Ordinal)));

    /// <summary>The lost energy of an event is against the usual level of all days; each day carries its part of it.</summary>
    private static List<(LocalDate Date, double Kwh)> FailedDays(Shortfall found, Judgement judged)
    {
        var told = judged.Days.Where(d => found.Days.Contains(d.Date) && d.Ratio is not null).ToList();
        var level = told.Sum(d => d.ExpectedKwh) is > 0 and var expected ? (found.LostKwh + told.Sum(d => d.MadeKwh!.Value)) / expected : 1;
        return told.ConvertAll(d => (d.Date, (d.ExpectedKwh * level) - d.MadeKwh!.Value));
    }

    private static LostEnergy EventOf(
        Shortfall found, IReadOnlyList<(LocalDate Date, double Kwh)> told, OutputDays place, Judgement judged, LossPrices prices, LossOptions options, Site site)
    {
        var days = new List<LostDay>();
        var (exported, used, isPriced) = (0m, 0m, true);
        foreach (var (date, kwh) in told)
        {
            var worth = prices.Of(date, kwh);
            isPriced &= worth is not null;
            exported += worth?.AllExported ?? 0;
            used += worth?.AllUsed ?? 0;
            days.Add(new LostDay(date, kwh, worth?.Value is { } value ? Money.Nominal(value, site.Currency) : null));
        }
        var scatter = judged.Models.Min(m => m.Scatter);
        var between = place.Dates.Select((date, d) => (date, d)).Any(x => found.Days.Contains(x.date) && place.IsBetweenDevices[x.d]);
        var names = place.Line.Select(d => d.Name).Concat(StandingBehind(place, found.Days.Start, site).Select(p => p.Array.Face.Name)).ToList();
        return new LostEnergy(
            between ? found with { Why = "no device was at work: one had gone and the next had not come" } : found,
            NormalNinetyFive * scatter * Math.Sqrt(told.Count) * KwpOn(place, found.Days.Start),
            isPriced && told.Count > 0 ? new MoneyRange(Money.Nominal(exported, site.Currency), Money.Nominal(used, site.Currency)) : null,
            days)
        {
            Receipts = [.. (options.Ledger?.Entries ?? []).Where(e => e.Device is { } name && place.Line.Any(d => string.Equals(d.Name, name, StringComparison.Ordinal))
                && e.Class is not LedgerClass.Finance && IsNear(e.Date, found.Days, DaysBeforeReceipt, DaysAfterReceipt))],
            Log = [.. site.Plant.Log.Where(l => IsNear(l.On, found.Days, 2, 2) && l.Concerns(names))],
        };
    }

    private static bool IsNear(LocalDate date, DateSpan span, int before, int after) => date >= span.Start.PlusDays(-before) && date < span.End.PlusDays(after);

    private static double KwpOn(OutputDays place, LocalDate date) => place.Kwp[Array.IndexOf(place.Dates, date)];
}
