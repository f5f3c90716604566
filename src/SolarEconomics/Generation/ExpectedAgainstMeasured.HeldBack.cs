using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>What was held back: by an inverter at its limit, by a full battery or an export limit. Beside the failures, and none of them.</summary>
public sealed partial class ExpectedAgainstMeasured
{
    /// <summary>Days so far apart still make one event: bright weather comes in spells.</summary>
    private const int ClippingGapDays = 14;
    private const int CurtailmentGapDays = 3;

    /// <summary>Days on which something was marked as held back while the sun could shine.</summary>
    internal static bool[] MarkedDays(SiteRecords records, GenerationRecord place, OutputDays days, double? exportLimitKw)
    {
        var held = new bool[days.Dates.Length];
        for (var (i, d) = (0, 0); i < records.Grid.Count; i++)
        {
            while (days.Dates[d] != records.Days[i]) d++;
            held[d] |= place.CeilingKwh[i] > 0 && HeldBack.IsMarked(records, i, exportLimitKw);
        }
        return held;
    }

    private static IEnumerable<(Shortfall Found, IReadOnlyList<(LocalDate Date, double Kwh)> Days)> Clipping(OutputDays place, AtLimit atLimit)
    {
        foreach (var spell in Spells(place, d => place.HoursAtLimit[d] > 0 && place.ClippedKwh[d] > 0, ClippingGapDays))
        {
            var days = spell.Select(d => (place.Dates[d], place.ClippedKwh[d])).ToList();
            var (hours, limitKw) = (spell.Sum(d => place.HoursAtLimit[d]), atLimit.LimitKw(place.Dates[spell[0]]));
            yield return (new Shortfall(ShortfallKind.Clipping, SpanOf(days), days.Sum(d => d.Item2),
                string.Create(CultureInfo.InvariantCulture, $"at its limit of {limitKw:0.##} kW for {hours:0.#} hours on {days.Count} {(days.Count == 1 ? "day" : "days")}; no failure")), days);
        }
    }

    /// <summary>What the sky let expect on days held back, less what came; spells that scatter explains are left out.</summary>
    private static IEnumerable<(Shortfall Found, IReadOnlyList<(LocalDate Date, double Kwh)> Days)> Curtailment(OutputDays place, Judgement judged, bool[] heldBack)
    {
        if (judged.Models.FirstOrDefault(m => m.Reference.IsWeather) is not { } sky) yield break;
        var none = new bool[heldBack.Length];
        double? Missing(int d) => heldBack[d] && place.Kwh[d] is { } measured && sky.Expected(d, none) is { } expected ? (expected * place.Kwp[d]) - measured - place.ClippedKwh[d] : null;
        foreach (var spell in Spells(place, d => Missing(d) is not null, CurtailmentGapDays))
        {
            var days = spell.Select(d => (place.Dates[d], Missing(d)!.Value)).ToList();
            var kwh = days.Sum(d => d.Value);
            if (!(kwh > NormalNinetyFive * sky.Scatter * Math.Sqrt(days.Count) * place.Kwp[spell[0]])) continue;
            yield return (new Shortfall(ShortfallKind.Curtailment, SpanOf(days), kwh,
                string.Create(CultureInfo.InvariantCulture, $"the record marks {days.Count} of these days as held back; no failure")), days);
        }
    }

    /// <summary>The days as they are shown: on days held back, of which no sister tells, with what the sky let expect.</summary>
    private static IReadOnlyList<DayOfOutput> Shown(OutputDays place, Judgement judged, bool[] heldBack)
    {
        var sky = judged.Models.FirstOrDefault(m => m.Reference.IsWeather);
        var none = new bool[heldBack.Length];
        return [.. judged.Days.Select((day, d) => day with
        {
            Censored = heldBack[d],
            ExpectedKwh = day.ExpectedKwh == 0 && heldBack[d] && sky?.Expected(d, none) is { } yield ? yield * place.Kwp[d] : day.ExpectedKwh,
        })];
    }

    private static Yields YieldsOf(SiteRecords records, GenerationRecord place, ModelledReference weather, double? exportLimitKw)
    {
        var (kwh, plane, kwpHours, hours) = (0.0, 0.0, 0.0, 0.0);
        var line = records.Site.Plant.LineOf(place.Device.Name);
        var (kwp, day) = (0.0, default(LocalDate));
        for (var i = 0; i < records.Grid.Count; i++)
        {
            if (records.Days[i] != day) (day, kwp) = (records.Days[i], line.Sum(d => d.RatedKwpOn(records.Days[i])));
            if (!place.Series.Known[i] || !(kwp > 0) || HeldBack.IsMarked(records, i, exportLimitKw) || weather.PlaneIn(records.Grid, i) is not { } light) continue;
            (kwh, plane) = (kwh + (place.Series.Kwh[i] * place.ToAcMiddle), plane + light);
            (kwpHours, hours) = (kwpHours + (kwp * light), hours + light);
        }
        // Where the rated power changed, its mean is weighted by the light that fell.
        return new Yields(kwh, hours > 0 ? kwpHours / hours : 0, plane);
    }

    private static IEnumerable<List<int>> Spells(OutputDays place, Func<int, bool> belongs, int gapDays)
    {
        var spell = new List<int>();
        for (var d = 0; d < place.Dates.Length; d++)
        {
            if (!belongs(d)) continue;
            if (spell.Count > 0 && Period.DaysBetween(place.Dates[spell[^1]], place.Dates[d]) > gapDays)
            {
                yield return spell;
                spell = [];
            }
            spell.Add(d);
        }
        if (spell.Count > 0) yield return spell;
    }

    private static DateSpan SpanOf(IReadOnlyList<(LocalDate Date, double Kwh)> days) => new(days[0].Date, days[^1].Date.PlusDays(1));
}
