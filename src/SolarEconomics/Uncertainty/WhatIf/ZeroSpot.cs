namespace SolarEconomics;

/// <summary>A place at which a function is 0, and the stretch in which it was found.</summary>
/// <param name="Low">Low end of the stretch.</param>
/// <param name="High">High end of the stretch.</param>
/// <param name="At">The place.</param>
/// <param name="IsTouch">Whether the function comes to 0 there without crossing.</param>
internal readonly record struct ZeroSpot(double Low, double High, double At, bool IsTouch)
{
    /// <summary>Whether it leaps over 0 there, from one amount to another.</summary>
    internal bool IsJump { get; init; }

    internal static ZeroSpot Met(double at) => new(at, at, at, IsTouch: false);

    internal static ZeroSpot Touched(ZeroStretch s) => new(s.Low, s.High, Math.Abs(s.AtLow) <= Math.Abs(s.AtHigh) ? s.Low : s.High, IsTouch: true);

    /// <summary>Illinois' rule: a secant that never loses its bracket and halves the weight of an end that stays.</summary>
    internal static ZeroSpot Crossed(ZeroStretch s, Func<double, double> value, double size)
    {
        var (low, high) = (s.Low, s.High);
        var (atLow, atHigh) = (s.AtLow, s.AtHigh);
        var (weightLow, weightHigh, side) = (1.0, 1.0, 0);
        for (var step = 0; step < 200 && high - low > 1e-12 * (1 + Math.Abs(low) + Math.Abs(high)); step++)
        {
            var middle = ((low * atHigh * weightHigh) - (high * atLow * weightLow)) / ((atHigh * weightHigh) - (atLow * weightLow));
            if (!(middle > low && middle < high)) middle = low + ((high - low) / 2);
            if (!(middle > low && middle < high)) break;
            var found = value(middle);
            if (found == 0) return new ZeroSpot(s.Low, s.High, middle, IsTouch: false);
            // An end that stays twice in a row weighs half, so that the other end comes nearer from both sides.
            if ((found > 0) == (atHigh > 0))
            {
                if (side == -1) weightLow /= 2;
                (high, atHigh, weightHigh, side) = (middle, found, 1, -1);
            }
            else
            {
                if (side == 1) weightHigh /= 2;
                (low, atLow, weightLow, side) = (middle, found, 1, 1);
            }
        }
        var at = Math.Abs(atLow) < Math.Abs(atHigh) ? low : high;
        return new ZeroSpot(s.Low, s.High, at, IsTouch: false) { IsJump = Math.Min(Math.Abs(atLow), Math.Abs(atHigh)) > 1e-6 * size };
    }

    /// <summary>One spot for a touch and all that it adjoins, as neighbouring stretches see the same place. Crossings side by side without a touch stay apart.</summary>
    internal static IReadOnlyList<ZeroSpot> Merged(IEnumerable<ZeroSpot> spots)
    {
        var merged = new List<ZeroSpot>();
        foreach (var spot in spots.OrderBy(s => s.Low).ThenBy(s => s.High))
        {
            if (merged.Count > 0 && merged[^1].High >= spot.Low && (merged[^1].IsTouch || spot.IsTouch)) merged[^1] = merged[^1].With(spot);
            else merged.Add(spot);
        }
        return merged;
    }

    private ZeroSpot With(ZeroSpot next)
    {
        var (low, high) = (Low, Math.Max(High, next.High));
        return new ZeroSpot(low, high, low + ((high - low) / 2), IsTouch: true);
    }
}
