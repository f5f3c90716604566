using NodaTime;

namespace SolarEconomics;

/// <summary>The cash position over time: jumps where something is paid, straight between. Discounted or not.</summary>
internal sealed class CashPath
{
    private readonly LocalDate _origin;
    private readonly List<(int Day, double Before, double After)> _knots = [];

    /// <param name="origin">The first purchase: day 0.</param>
    /// <param name="horizon">First day that no longer counts.</param>
    /// <param name="events">All pieces, in any order.</param>
    /// <param name="discountRate">Nominal rate per year; 0 for the undiscounted position.</param>
    internal CashPath(LocalDate origin, LocalDate horizon, IEnumerable<CashEvent> events, double discountRate)
    {
        _origin = origin;
        var jumps = new SortedDictionary<int, double>();
        var slopes = new SortedDictionary<int, double>();
        var last = DayOf(horizon);
        foreach (var piece in events)
        {
            var (from, to) = (DayOf(piece.Start), DayOf(piece.End));
            if (from > last) continue;
            var amount = piece.Amount * Factor((from + to) / 2.0, discountRate);
            if (from == to)
            {
                jumps[from] = jumps.GetValueOrDefault(from) + amount;
                continue;
            }
            slopes[from] = slopes.GetValueOrDefault(from) + (amount / (to - from));
            slopes[to] = slopes.GetValueOrDefault(to) - (amount / (to - from));
        }
        var days = jumps.Keys.Concat(slopes.Keys).Append(last).Append(0).Where(d => d <= last).Distinct().Order();
        var (position, slope, before) = (0.0, 0.0, 0);
        var isFirst = true;
        foreach (var day in days)
        {
            if (!isFirst) position += slope * (day - before);
            isFirst = false;
            slope += slopes.GetValueOrDefault(day);
            var after = position + jumps.GetValueOrDefault(day);
            _knots.Add((day, position, after));
            (position, before) = (after, day);
        }
    }

    /// <summary>The position at the horizon.</summary>
    internal double AtEnd => _knots[^1].After;

    /// <summary>The lowest position of all days.</summary>
    internal double Lowest => _knots.Min(k => Math.Min(k.Before, k.After));

    /// <summary>The position at a number of days after the first purchase, jumps of that day included.</summary>
    internal double At(double day)
    {
        for (var k = _knots.Count - 1; k >= 0; k--)
        {
            if (_knots[k].Day > day) continue;
            if (k == _knots.Count - 1) return _knots[k].After;
            var share = (day - _knots[k].Day) / (_knots[k + 1].Day - _knots[k].Day);
            return _knots[k].After + (share * (_knots[k + 1].Before - _knots[k].After));
        }
        return 0;
    }

    /// <summary>Days after which the position reaches 0 for the first time since money was paid; <see langword="null"/> where it does not.</summary>
    internal double? FirstCrossing() => Crossings().Cast<double?>().FirstOrDefault();

    /// <summary>The last rise to 0 or above that holds to the horizon; <see langword="null"/> where the horizon finds it below 0.</summary>
    internal double? LastingCrossing() => AtEnd < 0 ? null : Crossings().Cast<double?>().LastOrDefault();

    private IEnumerable<double> Crossings()
    {
        var isOpen = false;
        for (var k = 0; k < _knots.Count; k++)
        {
            var (day, before, after) = _knots[k];
            if (k > 0 && isOpen && before >= 0)
            {
                var from = _knots[k - 1];
                var rise = before - from.After;
                isOpen = false;
                yield return rise > 0 ? from.Day + ((day - from.Day) * (-from.After / rise)) : day;
            }
            if (before < 0) isOpen = true;
            if (isOpen && after >= 0)
            {
                isOpen = false;
                yield return day;
            }
            if (after < 0) isOpen = true;
        }
    }

    private int DayOf(LocalDate date) => Period.DaysBetween(_origin, date);

    /// <summary>Days are counted on a year of 365, as the dated rate of return counts them.</summary>
    private static double Factor(double days, double rate) => Math.Pow(1 + rate, -days / 365.0);
}
