using System.Globalization;
using NodaTime;

namespace SolarEconomics;

public static partial class Reconcile
{
    /// <summary>Compares a counter with intervals of the same energy, period by period between its readings.</summary>
    /// <param name="counter">The counter; two readings at least.</param>
    /// <param name="channel">The intervals.</param>
    /// <param name="zone">Clock of the days on which the counter was read.</param>
    /// <param name="others">Channels that one of them may have left out. Default: none.</param>
    /// <exception cref="InvalidOperationException">The intervals cover none of the counter's periods.</exception>
    /// <remarks>A reading is taken at some time of its day, wider where its days are uncertain: the intervals give a range, and only what lies outside of it is a difference.</remarks>
    public static CounterComparison Compare(Counter counter, Channel channel, DateTimeZone zone, params IReadOnlyList<Channel> others)
    {
        ArgumentNullException.ThrowIfNull(counter);
        ArgumentNullException.ThrowIfNull(channel);
        ArgumentNullException.ThrowIfNull(zone);
        ArgumentNullException.ThrowIfNull(others);
        var sums = new DaySums(channel, zone);
        var periods = Periods(counter, sums);
        var complete = periods.Where(p => p.Complete).ToList();
        if (complete.Count == 0) throw Throw.NothingInCommon(counter.Device, channel.Name);
        var reasons = new List<Disagreement>();
        var (counted, low, high) = (complete.Sum(p => p.CounterKwh), complete.Sum(p => p.LowKwh), complete.Sum(p => p.HighKwh));
        if (high < 0 && counted > 0 && Within(counted, -high, -low)) reasons.Add(new(DisagreementKind.Sign, $"\"{channel.Name}\" has the opposite sign of the counter of \"{counter.Device}\""));
        foreach (var (unit, name) in new[] { (1000.0, counter.Device), (0.001, channel.Name) })
            if (Within(counted, low * unit, high * unit) && !Within(counted, low, high))
                reasons.Add(new(DisagreementKind.UnitFactor, $"\"{name}\" is a thousand times the other, as Wh read as kWh would be"));
        if (reasons.Count > 0 || complete.TrueForAll(Agrees)) return new CounterComparison(counter.Device, channel.Name, periods, reasons);
        AddSwappedDigits(counter, sums, periods, reasons);
        AddResets(counter, periods, reasons);
        if (reasons.Count == 0) AddLackOf(counter, channel, zone, others, complete, reasons);
        return new CounterComparison(counter.Device, channel.Name, periods, reasons);
    }

    /// <summary>Compares every counter of readings with the channel of the same device, or of its name, where there is one: of generation first, else of any flow.</summary>
    /// <param name="readings">The readings.</param>
    public static IReadOnlyList<CounterComparison> Counters(Readings readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        var comparisons = new List<CounterComparison>();
        foreach (var counter in readings.Counters.Where(c => c.Readings.Count > 1))
        {
            var channel = readings.Channels.Where(c => c.IsEnergy && c.Flow != FlowKind.Unknown && Names(c, counter.Device)).OrderBy(c => c.Flow).FirstOrDefault();
            if (channel is null || !Periods(counter, new DaySums(channel, readings.Zone)).Any(p => p.Complete)) continue;
            comparisons.Add(Compare(counter, channel, readings.Zone, [.. readings.Of(channel.Flow).Where(c => c != channel)]));
        }
        return comparisons;
    }

    private static bool Names(Channel channel, string device) =>
        string.Equals(channel.Device, device, StringComparison.OrdinalIgnoreCase) || string.Equals(channel.Name, device, StringComparison.OrdinalIgnoreCase);

    private static List<CounterPeriod> Periods(Counter counter, DaySums sums)
    {
        var periods = new List<CounterPeriod>();
        for (var i = 1; i < counter.Readings.Count; i++) periods.Add(Period(counter.Readings[i - 1], counter.Readings[i], sums));
        return periods;
    }

    private static CounterPeriod Period(CounterReading from, CounterReading to, DaySums sums)
    {
        var widest = new DateSpan(from.Date.PlusDays(-from.DaysUncertain), to.Date.PlusDays(to.DaysUncertain + 1));
        var (start, end) = (from.Date.PlusDays(from.DaysUncertain + 1), to.Date.PlusDays(-to.DaysUncertain));
        var narrowest = new DateSpan(start, LocalDate.Max(start, end));
        var (one, other) = (sums.Kwh(narrowest), sums.Kwh(widest));
        return new CounterPeriod(new DateSpan(from.Date, to.Date), CounterStep.Between(from.Kwh, to.Kwh).Kwh, Math.Min(one, other), Math.Max(one, other), sums.Cover(new DateSpan(from.Date, to.Date)));
    }

    private static bool Agrees(CounterPeriod period) => Within(period.CounterKwh, period.LowKwh, period.HighKwh);

    private static bool Within(double kwh, double low, double high) => kwh >= low - (Agreement * Math.Abs(low)) && kwh <= high + (Agreement * Math.Abs(high));

    /// <summary>A reading of which two digits beside each other, put the other way round, let both its periods agree.</summary>
    private static void AddSwappedDigits(Counter counter, DaySums sums, List<CounterPeriod> periods, List<Disagreement> reasons)
    {
        for (var i = 0; i < counter.Readings.Count; i++)
        {
            var beside = new[] { i - 1, i }.Where(p => p >= 0 && p < periods.Count && periods[p].Complete).ToList();
            if (beside.Count == 0 || beside.TrueForAll(p => Agrees(periods[p]))) continue;
            foreach (var kwh in Swapped(counter.Readings[i].Kwh))
            {
                var mended = counter.Readings[i] with { Kwh = kwh };
                if (!beside.TrueForAll(p => Agrees(p == i ? Period(mended, counter.Readings[i + 1], sums) : Period(counter.Readings[i - 1], mended, sums)))) continue;
                reasons.Add(new(DisagreementKind.SwappedDigits, string.Create(CultureInfo.InvariantCulture,
                    $"the reading of {counter.Readings[i].Date:uuuu-MM-dd} has two digits swapped: {counter.Readings[i].Kwh:R} for {kwh:R}")));
                break;
            }
        }
    }

    private static IEnumerable<double> Swapped(double kwh)
    {
        var digits = kwh.ToString("0.###", CultureInfo.InvariantCulture).ToCharArray();
        for (var i = 0; i + 1 < digits.Length; i++)
        {
            if (!char.IsAsciiDigit(digits[i]) || !char.IsAsciiDigit(digits[i + 1]) || digits[i] == digits[i + 1]) continue;
            (digits[i], digits[i + 1]) = (digits[i + 1], digits[i]);
            yield return double.Parse(digits, CultureInfo.InvariantCulture);
            (digits[i], digits[i + 1]) = (digits[i + 1], digits[i]);
        }
    }

    private static void AddResets(Counter counter, List<CounterPeriod> periods, List<Disagreement> reasons)
    {
        for (var i = 0; i < periods.Count; i++)
            if (periods[i].Complete && counter.Readings[i + 1].Kwh < counter.Readings[i].Kwh && periods[i].CounterKwh < periods[i].LowKwh && !Agrees(periods[i]))
                reasons.Add(new(DisagreementKind.Reset, string.Create(CultureInfo.InvariantCulture,
                    $"the counter of \"{counter.Device}\" was reset between {periods[i].Days.Start:uuuu-MM-dd} and {periods[i].Days.End:uuuu-MM-dd}, and what it counted before that is in no reading")));
    }

    private static void AddLackOf(Counter counter, Channel channel, DateTimeZone zone, IReadOnlyList<Channel> others, List<CounterPeriod> complete, List<Disagreement> reasons)
    {
        foreach (var other in others)
        {
            var sums = new DaySums(other, zone);
            if (!complete.TrueForAll(p => sums.Cover(p.Days))) continue;
            foreach (var (without, sign) in new[] { (channel.Name, 1), (counter.Device, -1) })
                if (complete.TrueForAll(p => Within(p.CounterKwh, p.LowKwh + (sign * sums.Kwh(p.Days)), p.HighKwh + (sign * sums.Kwh(p.Days)))))
                    reasons.Add(new(DisagreementKind.MissingDevice, $"\"{without}\" lacks what \"{other.Name}\" counts"));
        }
    }
}
