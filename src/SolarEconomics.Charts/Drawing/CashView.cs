using NodaTime;

namespace SolarEconomics.Charts;

/// <summary>The part of a cash curve that a picture shows: the honest curve whole, the straight line as far as it stays in view.</summary>
internal sealed class CashView
{
    internal CashView(CashCurve curve, bool withStraightLine)
    {
        Start = curve.Points[0].Date;
        End = curve.Points[^1].Date;
        var lastRecorded = curve.Points.ToList().FindLastIndex(p => p.IsRecorded);
        Recorded = curve.Points.Take(lastRecorded + 1).ToList();
        // The projected line starts at the last recorded point, so that the curve has no hole.
        Projected = curve.Points.Skip(Math.Max(lastRecorded, 0)).ToList();
        LastRecorded = lastRecorded >= 0 && lastRecorded < curve.Points.Count - 1 ? curve.Points[lastRecorded] : null;
        var low = Math.Min(0, curve.Points.Min(p => (double)p.Position.Amount));
        var high = Math.Max(0, curve.Points.Max(p => (double)p.Position.Amount));
        if (withStraightLine && curve.StraightLine.Count > 0)
        {
            low = Math.Min(low, curve.StraightLine.Min(p => (double)p.Position.Amount));
            // A straight line that pays back is shown past zero; how much further it would go is not the point.
            high = Math.Max(high, Math.Min(curve.StraightLine.Max(p => (double)p.Position.Amount), -0.35 * low));
        }

        var room = Math.Max(high - low, 1) * 0.08;
        Low = low - room;
        High = high + room;
        StraightLine = Cut(curve.StraightLine, High);
    }

    internal LocalDate Start { get; }

    internal LocalDate End { get; }

    internal double Low { get; }

    internal double High { get; }

    internal IReadOnlyList<CashPoint> Recorded { get; }

    internal IReadOnlyList<CashPoint> Projected { get; }

    internal IReadOnlyList<CashPoint> StraightLine { get; }

    /// <summary>Where records end and projection starts; <see langword="null"/> where there is only one of them.</summary>
    internal CashPoint? LastRecorded { get; }

    /// <summary>Share of the picture's width at a date, from 0 to 1.</summary>
    internal double ShareOf(LocalDate date) =>
        Period.DaysBetween(Start, date) / (double)Math.Max(1, Period.DaysBetween(Start, End));

    /// <summary>The day on which the straight line first reaches a height; <see langword="null"/> where it does not.</summary>
    internal LocalDate? StraightLineReaches(double amount)
    {
        for (var i = 1; i < StraightLine.Count; i++)
        {
            var (from, to) = ((double)StraightLine[i - 1].Position.Amount, (double)StraightLine[i].Position.Amount);
            if (from < amount && to >= amount)
            {
                var days = Period.DaysBetween(StraightLine[i - 1].Date, StraightLine[i].Date);
                return StraightLine[i - 1].Date.PlusDays((int)(days * (amount - from) / (to - from)));
            }
        }

        return null;
    }

    /// <summary>The straight line's height on a day inside its span.</summary>
    internal double StraightLineAt(LocalDate date)
    {
        var i = Math.Clamp(StraightLine.ToList().FindIndex(p => p.Date >= date), 1, StraightLine.Count - 1);
        var (from, to) = (StraightLine[i - 1], StraightLine[i]);
        var share = Period.DaysBetween(from.Date, date) / (double)Period.DaysBetween(from.Date, to.Date);
        return (double)from.Position.Amount + share * (double)(to.Position - from.Position).Amount;
    }

    /// <summary>The day at a share of the picture's width.</summary>
    internal LocalDate DateAt(double share) => Start.PlusDays((int)(share * Period.DaysBetween(Start, End)));

    private static List<CashPoint> Cut(IReadOnlyList<CashPoint> points, double high)
    {
        var above = points.ToList().FindIndex(p => (double)p.Position.Amount > high);
        return (above < 0 ? points : points.Take(above + 1)).ToList();
    }
}
