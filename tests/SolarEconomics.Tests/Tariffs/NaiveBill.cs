using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>The slow twin of the billing plan: asks each interval for its month, version and rates, and adds decimals.</summary>
internal static class NaiveBill
{
    internal static List<(decimal BeforeTax, decimal Tax, decimal Total)> Months(
        IReadOnlyList<Tariff> versions, IntervalGrid grid, DateTimeZone zone, double[] importKwh, double[] exportKwh)
    {
        var kwh = new SortedDictionary<(int Month, LocalDate Version), Dictionary<(TariffPart, EnergyRate), decimal>>();
        var days = new Dictionary<(int Month, LocalDate Version), HashSet<LocalDate>>();
        for (var i = 0; i < grid.Count; i++)
        {
            var local = grid.StartOf(i).InZone(zone).LocalDateTime;
            var version = versions.Where(v => v.From <= local.Date).MaxBy(v => v.From)!;
            var key = (local.Year * 12 + local.Month, version.From);
            if (!kwh.ContainsKey(key)) kwh.Add(key, []);
            if (!days.ContainsKey(key)) days.Add(key, []);
            days[key].Add(local.Date);
            foreach (var part in version.Parts.OfType<EnergyPart>())
            {
                var rate = RateAt(version, part, local);
                var energy = (decimal)(part.Side == EnergySide.Import ? importKwh[i] : exportKwh[i]);
                kwh[key][(part, rate)] = kwh[key].GetValueOrDefault((part, rate)) + energy;
            }
        }
        return [.. kwh.Keys.GroupBy(k => k.Month).Select(month => Total(month.Select(k => (Version(versions, k.Version), kwh[k], days[k])).ToList()))];
    }

    private static (decimal BeforeTax, decimal Tax, decimal Total) Total(
        List<(Tariff Tariff, Dictionary<(TariffPart Part, EnergyRate Rate), decimal> Kwh, HashSet<LocalDate> Days)> segments)
    {
        decimal before = 0, tax = 0;
        foreach (var (tariff, kwh, days) in segments)
        {
            void Line(TariffPart part, decimal amount)
            {
                if (tariff.Rounding.Place == RoundingPlace.Line) amount = Round(tariff, amount);
                before += amount;
                tax += amount * (part.TaxFraction ?? (part is EnergyPart { Side: EnergySide.Export } ? 0 : tariff.Tax));
            }
            foreach (var supply in tariff.Parts.OfType<SupplyCharge>()) Line(supply, days.Count * supply.Amount);
            foreach (var ((part, rate), sum) in kwh)
                Line(part, part is EnergyPart { Side: EnergySide.Import } ? sum * rate.PerKwh : -sum * rate.PerKwh);
        }
        var last = segments[^1].Tariff;
        if (last.Rounding.Place == RoundingPlace.Line) tax = Round(last, tax);
        return (before, tax, last.Rounding.Place == RoundingPlace.Nowhere ? before + tax : Round(last, before + tax));
    }

    private static decimal Round(Tariff tariff, decimal amount)
    {
        var cents = Math.Abs(amount) * 100;
        var whole = Math.Floor(cents);
        var rest = cents - whole;
        var up = tariff.Rounding.Mode switch
        {
            RoundingMode.HalfUp => rest >= 0.5m,
            RoundingMode.HalfEven => rest > 0.5m || (rest == 0.5m && whole % 2 == 1),
            _ => false,
        };
        return Math.Sign(amount) * (whole + (up ? 1 : 0)) / 100;
    }

    private static EnergyRate RateAt(Tariff tariff, EnergyPart part, LocalDateTime at) =>
        part.Rates.FirstOrDefault(r => r.Windows.Any(w => Applies(tariff, w, at))) ?? part.Rates.Single(r => r.Windows.Count == 0);

    private static bool Applies(Tariff tariff, RateWindow window, LocalDateTime at)
    {
        var holiday = tariff.Holidays.Days.Contains(at.Date);
        var kind = holiday ? TariffDays.Holidays : at.DayOfWeek switch
        {
            IsoDayOfWeek.Monday => TariffDays.Monday,
            IsoDayOfWeek.Tuesday => TariffDays.Tuesday,
            IsoDayOfWeek.Wednesday => TariffDays.Wednesday,
            IsoDayOfWeek.Thursday => TariffDays.Thursday,
            IsoDayOfWeek.Friday => TariffDays.Friday,
            IsoDayOfWeek.Saturday => TariffDays.Saturday,
            _ => TariffDays.Sunday,
        };
        if (!window.Days.HasFlag(kind)) return false;
        if (window.Season is { } name)
        {
            var season = tariff.Seasons.Single(s => s.Name == name);
            var start = season.From.InYear(at.Year);
            var end = season.Until.InYear(at.Year);
            var inside = start < end ? at.Date >= start && at.Date < end : at.Date >= start || at.Date < end;
            if (!inside) return false;
        }
        var minute = at.Hour * 60 + at.Minute;
        return window.Hours.Any(h => h.FromMinute < h.UntilMinute
            ? minute >= h.FromMinute && minute < h.UntilMinute
            : minute >= h.FromMinute || minute < h.UntilMinute);
    }

    private static Tariff Version(IReadOnlyList<Tariff> versions, LocalDate from) => versions.Single(v => v.From == from);
}
