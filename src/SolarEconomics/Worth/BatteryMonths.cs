using NodaTime;

namespace SolarEconomics;

/// <summary>The days of a recorded battery by calendar month, at one set of prices.</summary>
internal sealed class BatteryMonths
{
    private static readonly Duration s_dayBegins = Duration.FromHours(6);
    private readonly StoredDays[] _months = new StoredDays[12];
    private readonly StoredDays _all;

    internal BatteryMonths(EnergySet flows, EvidencePrices prices, DateTimeZone zone)
    {
        var (days, hours) = (new SortedDictionary<LocalDate, StoredDay>(), new double[12]);
        var first = flows.Grid.Start.InZone(zone).Date;
        for (var i = 0; i < flows.Grid.Count; i++)
        {
            var start = flows.Grid.StartOf(i);
            hours[start.InZone(zone).Month - 1] += flows.Grid.StepHours;
            if (flows.ChargeKwh[i] == 0 && flows.DischargeKwh[i] == 0) continue;
            // What is stored by day comes out until the next morning, so midnight would part what belongs together.
            var day = LocalDate.Max(first, (start - s_dayBegins).InZone(zone).Date);
            days[day] = days.GetValueOrDefault(day) + StoredDay.Of(flows, prices, i);
        }
        for (var m = 0; m < 12; m++) _months[m] = new StoredDays(hours[m], days.Where(d => d.Key.Month == m + 1).Select(d => d.Value));
        _all = new StoredDays(hours.Sum(), days.Values);
    }

    /// <summary>Delivered in a year of the records. Unit: kWh.</summary>
    internal double DischargePerYear => Enumerable.Range(1, 12).Sum(m => Delivered(m, 730.5));

    internal double Delivered(int calendarMonth, double hours) => Scaled(calendarMonth, hours, d => d.Total).DischargeKwh;

    internal StoredDay Lost(int calendarMonth, double hours, double recordedKwh, double share) => Scaled(calendarMonth, hours, d => d.Lost(recordedKwh, share));

    private StoredDay Scaled(int calendarMonth, double hours, Func<StoredDays, StoredDay> of)
    {
        var month = _months[calendarMonth - 1].Hours > 0 ? _months[calendarMonth - 1] : _all;
        return of(month) * (month.Hours > 0 ? hours / month.Hours : 0);
    }
}
