using System.Globalization;

namespace SolarEconomics;

/// <summary>Finds where typed readings of one counter go on in a unit a thousand times larger or smaller, as displays change from kWh to MWh, and brings them to kWh.</summary>
internal static class CounterUnits
{
    private const double Thousand = 1000;

    /// <summary>Energy is at the pace before where it is at most this many times more or less.</summary>
    private const double SamePace = 3;

    /// <summary>A lifetime of a home's counter is below this; larger numbers are Wh. Unit: kWh. Common practice, no source.</summary>
    private const double LargestHomeKwh = 1e6;

    /// <summary>The readings in kWh; the same list where no unit changed.</summary>
    internal static List<CounterReading> Mended(string device, List<CounterReading> readings, int column, ProblemList problems)
    {
        var factors = new double[readings.Count];
        var factor = 1.0;
        for (var i = 0; i < readings.Count; i++)
        {
            if (i > 0 && ChangeAt(readings, factors, i) is var change && change != 1)
            {
                factor /= change;
                var (from, to) = (readings[i - 1], readings[i]);
                problems.Doubtful(to.Line, column, to.Kwh.ToString("R", CultureInfo.InvariantCulture),
                    string.Create(CultureInfo.InvariantCulture, $"the counter of {device} going on from {from.Kwh:R} at {to.Kwh:R}, which is its pace before in a unit a thousand times {(change < 1 ? "larger" : "smaller")}"),
                    "one unit; it is read as the same counter in another unit, and all its readings are brought to kWh. Write the unit behind the number, such as 11.2 MWh, to be sure");
            }
            factors[i] = factor;
        }
        if (factor == 1 && Array.TrueForAll(factors, f => f == 1)) return readings;
        // kWh are the larger of the two numbers, but for those that no home counts.
        var kwh = readings.Max(r => r.Kwh) < LargestHomeKwh ? factors.Min() : factors.Max();
        return [.. readings.Select((r, i) => r with { Kwh = r.Kwh * factors[i] / kwh })];
    }

    /// <summary>1000 or 1/1000 where a reading fits the pace before only by that factor; else 1.</summary>
    private static double ChangeAt(List<CounterReading> readings, double[] factors, int at)
    {
        var (first, from, to) = (readings[0], readings[at - 1], readings[at]);
        var days = NodaTime.Period.DaysBetween(first.Date, from.Date);
        // In the unit of the reading before.
        var unit = factors[at - 1];
        var pace = days > 0 ? ((from.Kwh * unit) - (first.Kwh * factors[0])) / unit / days : 0;
        var expected = pace * NodaTime.Period.DaysBetween(from.Date, to.Date);
        if (expected <= 0 || Fits(to.Kwh - from.Kwh, expected)) return 1;
        var change = to.Kwh > from.Kwh ? Thousand : 1 / Thousand;
        if (!Fits((to.Kwh / change) - from.Kwh, expected) || Fits(to.Kwh, expected)) return 1;
        return IsBorneOut(readings, at, change, pace, expected) ? change : 1;
    }

    /// <summary>The reading after it must go on in that unit too; where there is none, a register that ran over would be as likely.</summary>
    private static bool IsBorneOut(List<CounterReading> readings, int at, double change, double pace, double expected)
    {
        if (at + 1 == readings.Count) return CounterStep.SizeAtPace(readings[at - 1].Kwh, readings[at].Kwh, expected) == 0;
        var (to, next) = (readings[at], readings[at + 1]);
        return Fits((next.Kwh - to.Kwh) / change, pace * NodaTime.Period.DaysBetween(to.Date, next.Date));
    }

    private static bool Fits(double kwh, double expected) => kwh >= expected / SamePace && kwh <= expected * SamePace;
}
