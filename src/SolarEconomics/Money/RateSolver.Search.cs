namespace SolarEconomics;

internal static partial class RateSolver
{
    /// <summary>The recursive search, with the steps it took.</summary>
    private sealed class Search
    {
        internal int Steps { get; private set; }

        internal bool Failed { get; private set; }

        /// <summary>All x at which the sum is 0, lowest first; one that only touches 0 stands once.</summary>
        internal List<double> Roots(Terms terms)
        {
            var roots = new List<double>();
            if (terms.SignChanges == 0) return roots;
            // With one sign change the derivative has no root: the whole line is one monotone piece.
            List<double> turns = terms.SignChanges == 1 ? [] : Roots(terms.WithOneSignChangeFewer());

            var from = double.NegativeInfinity;
            var signBefore = terms.SignAtLowRates;
            foreach (var turn in turns)
            {
                var touches = terms.IsZeroWithinRounding(turn);
                var sign = touches ? 0 : Math.Sign(terms.At(turn).Value);
                if (touches) roots.Add(turn);
                else if (signBefore * sign < 0) roots.Add(Within(terms, from, turn, signBefore));
                (from, signBefore) = (turn, sign);
            }
            if (signBefore * terms.SignAtHighRates < 0) roots.Add(Within(terms, from, double.PositiveInfinity, signBefore));
            return roots;
        }

        /// <summary>The root of a monotone piece whose ends differ in sign; an end may be infinite.</summary>
        private double Within(Terms terms, double low, double high, int signAtLow)
        {
            (low, high) = Finite(terms, low, high, signAtLow);
            var x = double.IsFinite(low + high) ? (low + high) / 2 : 0;
            var before = high - low;
            for (var step = 0; step < MostSteps; step++)
            {
                Steps++;
                var (value, slope) = terms.At(x);
                if (value == 0) return x;
                if (Math.Sign(value) == signAtLow) low = x; else high = x;
                var width = high - low;
                if (width <= 4e-16 * Math.Max(1, Math.Abs(x))) return x;

                var next = x - value / slope;
                // Newton only while it stays inside; and a piece that did not halve in one round is halved.
                var newton = slope != 0 && next > low && next < high && (step % 3 != 2 || width <= before / 2);
                if (step % 3 == 2) before = width;
                if (!newton) next = low + width / 2;
                if (newton && Math.Abs(next - x) <= 1e-16 * Math.Max(1, Math.Abs(x))) return next;
                if (next == x) return x;
                x = next;
            }
            Failed = true;
            return x;
        }

        /// <summary>Replaces an infinite end by a point that already has that end's sign: steps outwards, doubling.</summary>
        private (double Low, double High) Finite(Terms terms, double low, double high, int signAtLow)
        {
            if (double.IsInfinity(low))
            {
                var start = double.IsInfinity(high) ? 0 : high;
                low = start - 0.125;
                for (var step = 0.25; Math.Sign(terms.At(low).Value) != signAtLow && step < 1e6; step *= 2)
                {
                    Steps++;
                    low = start - step;
                }
            }
            if (double.IsInfinity(high))
            {
                var start = low;
                high = start + 0.125;
                for (var step = 0.25; Math.Sign(terms.At(high).Value) == signAtLow && step < 1e6; step *= 2)
                {
                    Steps++;
                    high = start + step;
                }
            }
            return (low, high);
        }
    }
}
