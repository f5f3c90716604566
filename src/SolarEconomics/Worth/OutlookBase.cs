using NodaTime;

namespace SolarEconomics;

/// <summary>What a year of records says about a month of the future: sums by calendar month, per hour on record.</summary>
/// <remarks>Months that stand several times in the record are averaged by hours; a calendar month without records takes the mean of all.</remarks>
internal sealed class OutlookBase
{
    private readonly MonthSums[] _months;
    private readonly MonthSums _all;

    private readonly Lazy<BatteryMonths> _battery;

    private OutlookBase(MonthSums[] months, Lazy<BatteryMonths> battery)
    {
        _battery = battery;
        _months = months;
        _all = months.Aggregate(new MonthSums(), (a, b) => a.Plus(b));
    }

    /// <summary>Prices each interval at one plan's prices and adds up by calendar month.</summary>
    internal static OutlookBase Of(EnergySet flows, EvidencePrices prices, int firstMonth, DateTimeZone zone)
    {
        var months = new MonthSums[12];
        for (var i = 0; i < flows.Grid.Count; i++)
        {
            var month = (firstMonth - 1 + prices.MonthOf[i]) % 12;
            var own = flows.GenerationKwh[i] - flows.ExportKwh[i] - flows.ChargeKwh[i] + flows.DischargeKwh[i];
            months[month] = months[month].Plus(new MonthSums(
                flows.Grid.StepHours,
                prices.Import[i] * own,
                prices.Export[i] * flows.ExportKwh[i],
                prices.Import[i] * flows.StandbyKwh[i],
                flows.ExportKwh[i]));
        }
        return new OutlookBase(months, new Lazy<BatteryMonths>(() => new BatteryMonths(flows, prices, zone)));
    }

    /// <summary>The days of the recorded battery, laid out when first asked for.</summary>
    internal BatteryMonths Battery => _battery.Value;

    /// <summary>What a span of hours in a calendar month is worth: avoided purchase, feed-in, standby to pay (currency), and the kWh exported.</summary>
    internal (double Avoided, double FeedIn, double Standby, double ExportedKwh) Month(int calendarMonth, double hours)
    {
        var sums = _months[calendarMonth - 1].Hours > 0 ? _months[calendarMonth - 1] : _all;
        var scale = sums.Hours > 0 ? hours / sums.Hours : 0;
        return (sums.Avoided * scale, sums.FeedIn * scale, sums.Standby * scale, sums.ExportedKwh * scale);
    }

    private readonly record struct MonthSums(double Hours, double Avoided, double FeedIn, double Standby, double ExportedKwh)
    {
        internal MonthSums Plus(MonthSums other) =>
            new(Hours + other.Hours, Avoided + other.Avoided, FeedIn + other.FeedIn, Standby + other.Standby, ExportedKwh + other.ExportedKwh);
    }
}
