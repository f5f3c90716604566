using System.Text.Json;
using NodaTime;

namespace SolarEconomics;

/// <content>Seasons, hours and prices per kWh of an energy plan.</content>
internal sealed partial class EnergyPlanFile
{
    private string? SeasonOf(JsonElement period, string at)
    {
        if (MonthDay(period, "startDate", at) is not { } from || MonthDay(period, "endDate", at) is not { } last) return null;
        // The plan's last day belongs to the period; in a year without 29 February the day after 28 February is 1 March.
        var until = last.Day == 29 && last.Month == 2 ? new AnnualDate(3, 1) : DayAfter(last);
        if (from == until) return null;
        var name = Text(period, "displayName") ?? "season";
        if (_tariff.Seasons.FirstOrDefault(s => s.From == from && s.Until == until) is { } same) return same.Name;
        if (_tariff.Seasons.Any(s => s.Name == name)) name += $" from {from.Month:00}-{from.Day:00}";
        _tariff = _tariff with { Seasons = [.. _tariff.Seasons, new TariffSeason(name, from, until)] };
        return name;
    }

    private IEnumerable<EnergyRate> ReadRates(JsonElement period, string at, string? season)
    {
        if (period.TryGetProperty("singleRate", out var single) && single.ValueKind == JsonValueKind.Object)
        {
            RateWindow[] windows = season is null ? [] : [RateWindow.Always with { Season = season }];
            if (Rate(single, at + "/singleRate", "any hour", windows) is { } rate) yield return rate;
        }
        foreach (var (timed, place) in List(period, "timeOfUseRates", at))
        {
            var windows = Windows(timed, "timeOfUse", place, season);
            if (Rate(timed, place, Word(timed), windows) is { } rate) yield return rate;
        }
    }

    private List<RateWindow> Windows(JsonElement timed, string field, string at, string? season)
    {
        var windows = new List<RateWindow>();
        foreach (var (one, place) in List(timed, field, at))
            if (Window(one, place, season) is { } window) windows.Add(window);
        if (windows.Count == 0) _problems.Add(_json.At(at, $"no field \"{field}\" with anything in it", "the days and hours of the rate"));
        return windows;
    }

    private RateWindow? Window(JsonElement one, string at, string? season)
    {
        var days = TariffDays.None;
        foreach (var day in one.TryGetProperty("days", out var list) && list.ValueKind == JsonValueKind.Array ? list.EnumerateArray() : default)
        {
            var kind = DayOf(day.ToString());
            if (kind == TariffDays.None) _problems.Add(_json.At(at + "/days", $"day \"{day}\"", "MON to SUN or PUBLIC_HOLIDAYS"));
            days |= kind;
        }
        // All seven days named, a holiday among them is such a day too, unless another rate claims the holidays.
        if (days == TariffDays.None || days == (TariffDays.Weekdays | TariffDays.Weekends)) days |= TariffDays.EveryDay;
        else if (days.HasFlag(TariffDays.Holidays) && days != TariffDays.EveryDay) _holidayDays.Add(at + "/days");
        var (from, until) = (PlanTime.Minute(Text(one, "startTime") ?? "00:00"), PlanTime.Minute(Text(one, "endTime") ?? "00:00"));
        if (from is { } first && until is { } last) return new RateWindow(season, days, [PlanTime.Span(first, last)]);
        _problems.Add(_json.At(at, $"hours \"{Text(one, "startTime")}\" to \"{Text(one, "endTime")}\"", "times such as 15:00 and 21:00"));
        return null;
    }

    private EnergyRate? Rate(JsonElement owner, string at, string name, IReadOnlyList<RateWindow> windows)
    {
        var steps = new List<RateBlock>();
        var end = 0m;
        var parts = List(owner, "rates", at).ToList();
        foreach (var (one, place) in parts)
        {
            if ((Text(one, "measureUnit") ?? "KWH") != "KWH") return null;
            if (Number(one, "unitPrice", place) is not { } price) return null;
            decimal? size = one.TryGetProperty("volume", out _) ? Number(one, "volume", place) : null;
            end += size ?? 0;
            // The last step takes what is left, whatever size it states.
            steps.Add(new RateBlock(steps.Count == parts.Count - 1 ? null : end, price));
        }
        // The older form states one price beside the list, or instead of it.
        foreach (var field in new[] { "amount", "generalUnitPrice" })
            if (parts.Count == 0 && steps.Count == 0 && owner.TryGetProperty(field, out _) && Number(owner, field, at) is { } only) steps.Add(new RateBlock(null, only));
        if (steps.Count == 0) return null;
        var rate = new EnergyRate(name, steps[0].PerKwh, windows);
        if (steps.Count == 1) return rate;
        var (per, times) = BlockTime(Text(owner, "period") ?? "P1Y", at);
        return rate with { Blocks = new RateBlocks([.. steps.Select(s => s with { UpToKwh = s.UpToKwh / times })], per) };
    }

    /// <summary>The time for which blocks are stated: a kind of period, and how many of them.</summary>
    private (BlockPeriod Per, decimal Times) BlockTime(string period, string at)
    {
        if (period.Length > 2 && period[0] == 'P' && int.TryParse(period.AsSpan(1, period.Length - 2), System.Globalization.NumberStyles.None,
                System.Globalization.CultureInfo.InvariantCulture, out var count) && count > 0)
        {
            if (period[^1] == 'D') return count == 1 ? (BlockPeriod.Day, 1) : (BlockPeriod.DaysOfBill, count);
            if (period[^1] == 'W') return (BlockPeriod.DaysOfBill, 7 * count);
            if (period[^1] == 'M') return count switch
            {
                1 => (BlockPeriod.Month, 1m),
                3 => (BlockPeriod.Quarter, 1m),
                _ => (BlockPeriod.Year, count / 12m),
            };
            if (period[^1] == 'Y') return (BlockPeriod.Year, count);
        }
        _problems.Add(_json.At(at + "/period", $"\"{period}\"", "a period such as P1D, P1M, P3M or P1Y"));
        return (BlockPeriod.Bill, 1);
    }

    /// <summary>Rates under names of their own: a second "peak" gets its season or its number.</summary>
    private static IReadOnlyList<EnergyRate> Named(List<EnergyRate> rates) =>
        [.. rates.Select((r, i) => rates.Count(o => o.Name == r.Name) == 1 ? r
            : r with { Name = r.Windows.FirstOrDefault()?.Season is { } s && rates.Count(o => o.Name == r.Name && o.Windows.FirstOrDefault()?.Season == s) == 1
                ? $"{r.Name}, {s}" : FormattableString.Invariant($"{r.Name} {i + 1}") })];
}
