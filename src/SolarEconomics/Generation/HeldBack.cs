using NodaTime;

namespace SolarEconomics;

/// <summary>Intervals in which a plant could have made more than was counted, and what stands beside them to fill them from.</summary>
internal sealed class HeldBack
{
    private const double LeastClearKwPerKwp = 0.05;
    private const double NearLimit = 0.8;
    private const int Beside = 3;

    private HeldBack(int count)
    {
        Kwh = new double[count];
        IsFilled = new bool[count];
        IsOpen = new bool[count];
    }

    /// <summary>Energy of each interval, filled where it was held back and something tells how clear the sky was. Unit: kWh.</summary>
    internal double[] Kwh { get; }

    internal bool[] IsFilled { get; }

    /// <summary>Held back, and nothing beside it tells the sky: the recorded energy stands, a lower bound.</summary>
    internal bool[] IsOpen { get; }

    /// <summary>Marked as held back; with a limit on export only where export came near it, as the grid takes the rest until then.</summary>
    /// <remarks>Near is 0.8 of the limit in the interval's mean, as short peaks hide in it: an assumption. Where export is not on record the mark counts.</remarks>
    internal static bool IsMarked(SiteRecords records, int i, double? exportLimitKw) =>
        records.CensoredHours[i] > 0 && (exportLimitKw is not { } limit || records.Export is not { } export || !export.Known[i] || export.Kwh[i] >= NearLimit * limit * records.Grid.StepHours);

    /// <summary>Fills the held-back intervals of one place.</summary>
    /// <param name="records">The records.</param>
    /// <param name="place">The place.</param>
    /// <param name="clearKwPerKwp">What a clear sky without shade gives.</param>
    /// <param name="kwp">Rated power on each day.</param>
    /// <param name="exportLimitKw">Most that may go to the grid.</param>
    /// <remarks>Equation: filled = max(recorded, c · clear sky), c the share of the clear sky that the same day's unmarked intervals beside the run reached (mean of up to three before, three after,
    /// a straight line between the two), each taken beside what its month and hour reach at best.</remarks>
    internal static HeldBack Fill(SiteRecords records, GenerationRecord place, double[] clearKwPerKwp, Func<LocalDate, double> kwp, double? exportLimitKw)
    {
        var grid = records.Grid;
        var filled = new HeldBack(grid.Count);
        place.Series.Kwh.CopyTo(filled.Kwh, 0);
        for (var from = 0; from < grid.Count;)
        {
            var to = from;
            while (to < grid.Count && records.Days[to] == records.Days[from]) to++;
            filled.FillDay(records, place, clearKwPerKwp, kwp(records.Days[from]) * grid.StepHours, from, to, exportLimitKw);
            from = to;
        }
        return filled;
    }

    private void FillDay(SiteRecords records, GenerationRecord place, double[] clear, double rated, int from, int to, double? limit)
    {
        double? Share(int i) => place.Series.Known[i] && clear[i] >= LeastClearKwPerKwp && !IsMarked(records, i, limit) ? place.Series.Kwh[i] / (rated * clear[i]) : null;
        for (var i = from; i < to;)
        {
            if (!IsMarked(records, i, limit) || !place.Series.Known[i])
            {
                i++;
                continue;
            }
            var end = i;
            while (end < to && IsMarked(records, end, limit)) end++;
            var before = Mean(Enumerable.Range(from, i - from).Reverse().Select(Share));
            var after = Mean(Enumerable.Range(end, to - end).Select(Share));
            for (var k = i; k < end; k++)
            {
                if (!place.Series.Known[k] || !(rated > 0)) continue;
                var share = (before, after) switch
                {
                    ({ } b, { } a) => b + ((a - b) * (k - i + 1) / (end - i + 1)),
                    _ => before ?? after,
                };
                if (share is null && clear[k] >= LeastClearKwPerKwp) IsOpen[k] = true;
                if (!(share * clear[k] * rated > Kwh[k])) continue;
                Kwh[k] = share!.Value * clear[k] * rated;
                IsFilled[k] = true;
            }
            i = end;
        }
    }

    private static double? Mean(IEnumerable<double?> shares)
    {
        double[] told = [.. shares.OfType<double>().Take(Beside)];
        return told.Length == 0 ? null : told.Average();
    }
}
