using System.Globalization;
using NodaTime;

namespace SolarEconomics;

public sealed partial class Outlook
{
    /// <summary>When the plant is paid back: lasting, undiscounted and nominal, in years from the first purchase; first and discounted beside it.</summary>
    /// <remarks>Equation: the last time that the cash position rises to 0 or above and stays there to the horizon, straight within a month.</remarks>
    public Payback Payback
    {
        get
        {
            var lasting = Years(_path.LastingCrossing());
            var first = Years(_path.FirstCrossing());
            var discounted = Years(_discounted.LastingCrossing());
            LocalDate? date = _path.LastingCrossing() is { } days ? _flows.FirstPurchase.PlusDays((int)Math.Ceiling(days)) : null;
            var words = OutlookWords.Payback(this, lasting, first, discounted, date, CultureInfo.InvariantCulture);
            return new Payback(lasting, first, discounted, date, Assumptions.Years, words);
        }
    }

    /// <summary>The cash position month by month to the horizon, with the straight line of counters times one price beside it.</summary>
    public CashCurve CashCurve()
    {
        var dates = new List<LocalDate> { _flows.FirstPurchase };
        for (var day = new LocalDate(_flows.FirstPurchase.Year, _flows.FirstPurchase.Month, 1).PlusMonths(1); day < _flows.Horizon; day = day.PlusMonths(1))
            dates.Add(day);
        dates.Add(_flows.Horizon);
        var points = dates.Select(d => PointAt(d, _path.At(DayOf(d)))).ToList();
        var line = WorthToDate.StraightLine;
        var straight = line is null ? [] : dates.Select(d => PointAt(d, (double)line.YearlyValue.Amount * DayOf(d) / 365.25 - (double)line.Cost.Amount)).ToList();
        var payback = Payback;
        return new CashCurve(points, straight, payback, line?.PaybackYears, OutlookWords.Curve(this, payback, CultureInfo.InvariantCulture));
    }

    private CashPoint PointAt(LocalDate date, double position) =>
        new(date, DayOf(date) / 365.25, Round(position), date <= WorthToDate.Period.End);

    private int DayOf(LocalDate date) => Period.DaysBetween(_flows.FirstPurchase, date);

    private static double? Years(double? days) => days / 365.25;
}
