using NodaTime;

namespace SolarEconomics.Charts;

/// <summary>The part of a cash curve that a picture shows: the honest curve whole, the straight line as far as it stays in view.</summary>
internal sealed class CashView
{
    private readonly IReadOnlyList<CashPoint> _points;

    internal CashView(CashCurve curve, bool withStraightLine)
    {
        _points = curve.Points;
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
        StraightLine = withStraightLine ? Cut(curve.StraightLine, High) : [];
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

    /// <summary>Share of the picture's height at an amount, from 0 to 1.</summary>
    internal double HeightOf(double amount) => (amount - Low) / (High - Low);

    /// <summary>The straight line's amount on a day; <see langword="null"/> outside its span.</summary>
    internal double? StraightLineAt(LocalDate date) => At(StraightLine, date);

    /// <summary>Heights of both lines on a day, in shares of the picture's.</summary>
    internal IEnumerable<double> HeightsAt(LocalDate date)
    {
        foreach (var points in new[] { _points, StraightLine })
        {
            if (At(points, date) is { } amount)
            {
                yield return HeightOf(amount);
            }
        }
    }

    private static double? At(IReadOnlyList<CashPoint> points, LocalDate date)
    {
        for (var i = 1; i < points.Count; i++)
        {
            if (points[i - 1].Date <= date && date <= points[i].Date)
            {
                var share = Period.DaysBetween(points[i - 1].Date, date) / (double)Math.Max(1, Period.DaysBetween(points[i - 1].Date, points[i].Date));
                return (double)points[i - 1].Position.Amount + share * (double)(points[i].Position - points[i - 1].Position).Amount;
            }
        }

        return null;
    }

    /// <summary>The day at a share of the picture's width.</summary>
    internal LocalDate DateAt(double share) => Start.PlusDays((int)(share * Period.DaysBetween(Start, End)));

    private static List<CashPoint> Cut(IReadOnlyList<CashPoint> points, double high)
    {
        var above = points.ToList().FindIndex(p => (double)p.Position.Amount > high);
        return (above < 0 ? points : points.Take(above + 1)).ToList();
    }
}
