using System.Globalization;

namespace SolarEconomics;

/// <summary>Finds where a counter goes on in another unit, a thousand times larger or smaller, and brings all its states to the one that its header names.</summary>
internal static class UnitChange
{
    private const double Thousand = 1000;

    /// <summary>A state that is a thousand times the one before to within this share is the same counter in another unit.</summary>
    private const double Near = 0.01;

    /// <summary>Below this a factor of a thousand may be chance. Unit: kWh.</summary>
    private const double LeastKwh = 1;

    /// <summary>The states in one unit; the column's own where nothing changed.</summary>
    internal static ReadOnlySpan<double> Mended(IntervalTable table, int column, ValueColumn meaning, ProblemList problems)
    {
        var values = table.Values(column);
        var quality = table.Quality(column);
        double[]? mended = null;
        var (last, factor, least, most) = (-1, 1.0, 1.0, 1.0);
        for (var i = 0; i < values.Length; i++)
        {
            if (quality[i].HasFlag(Quality.Missing)) continue;
            if (last >= 0 && Change(values[last], values[i]) is var change && change != 1)
            {
                mended ??= values.ToArray();
                factor /= change;
                (least, most) = (Math.Min(least, factor), Math.Max(most, factor));
                problems.Doubtful(table.LineOf(i), meaning.Index + 1, values[i].ToString("R", CultureInfo.InvariantCulture),
                    string.Create(CultureInfo.InvariantCulture, $"\"{meaning.Name}\" going on from {values[last]:R} at {values[i]:R} kWh, a thousand times {(change > 1 ? "more" : "less")}"),
                    "one unit; it is read as the same counter in another unit, and all its states are brought to the one that the header names");
            }
            if (mended is not null) mended[i] = values[i] * factor;
            last = i;
        }
        if (mended is null) return values;
        // The header's unit holds for the smaller numbers where it is kWh or above, and for the larger ones where it is Wh.
        var named = meaning.Meaning.Unit is "Wh" ? least : most;
        for (var i = 0; i < mended.Length; i++) mended[i] /= named;
        return mended;
    }

    private static double Change(double from, double to)
    {
        if (Math.Min(from, to) < LeastKwh) return 1;
        if (to >= from * Thousand && to <= from * Thousand * (1 + Near)) return Thousand;
        return to * Thousand >= from && to * Thousand <= from * (1 + Near) ? 1 / Thousand : 1;
    }
}
