namespace SolarEconomics;

internal static partial class RateSolver
{
    /// <summary>A sum Σ a·exp(-t·x): amounts that are not 0, times ascending and all different.</summary>
    private sealed class Terms
    {
        private readonly double[] _amounts;
        private readonly double[] _years;

        private Terms(double[] amounts, double[] years)
        {
            (_amounts, _years) = (amounts, years);
            for (var i = 1; i < amounts.Length; i++)
            {
                if (amounts[i - 1] < 0 != amounts[i] < 0) SignChanges++;
            }
        }

        internal int SignChanges { get; }

        /// <summary>Sign for x towards +∞ (a huge rate): that of the earliest amount.</summary>
        internal int SignAtHighRates => Math.Sign(_amounts[0]);

        /// <summary>Sign for x towards -∞ (a rate near -100 %): that of the latest amount.</summary>
        internal int SignAtLowRates => Math.Sign(_amounts[^1]);

        internal static Terms Of(double[] amounts, double[] years)
        {
            var kept = new List<double>(amounts.Length);
            var times = new List<double>(amounts.Length);
            for (var i = 0; i < amounts.Length; i++)
            {
                if (times.Count > 0 && times[^1] == years[i])
                {
                    kept[^1] += amounts[i];
                }
                else
                {
                    kept.Add(amounts[i]);
                    times.Add(years[i]);
                }
            }
            for (var i = kept.Count - 1; i >= 0; i--)
            {
                if (kept[i] != 0) continue;
                kept.RemoveAt(i);
                times.RemoveAt(i);
            }
            return new Terms([.. kept], [.. times]);
        }

        /// <summary>The derivative of exp(μx)·f(x), without its factor exp(μx): one sign change fewer.</summary>
        internal Terms WithOneSignChangeFewer()
        {
            var at = 1;
            while (_amounts[at - 1] < 0 == _amounts[at] < 0) at++;
            var middle = (_years[at - 1] + _years[at]) / 2;
            var span = _years[^1] - _years[0];
            var amounts = new double[_amounts.Length];
            // Divided by the whole span so that many differentiations in a row cannot overflow.
            for (var i = 0; i < amounts.Length; i++) amounts[i] = _amounts[i] * ((middle - _years[i]) / span);
            return new Terms(amounts, _years);
        }

        /// <summary>Value and slope in x, both divided by the largest factor exp(-t·x) so that neither overflows; 0 where rounding hides the sign.</summary>
        internal (double Value, double Slope) At(double x)
        {
            var largest = Math.Max(-_years[0] * x, -_years[^1] * x);
            double value = 0, slope = 0, size = 0;
            for (var i = 0; i < _amounts.Length; i++)
            {
                var term = _amounts[i] * Math.Exp(-_years[i] * x - largest);
                value += term;
                slope -= _years[i] * term;
                size += Math.Abs(term);
            }
            return (value, slope);
        }

        /// <summary>Whether the value at x cannot be told from 0: smaller than what rounding alone can make of it.</summary>
        internal bool IsZeroWithinRounding(double x)
        {
            var largest = Math.Max(-_years[0] * x, -_years[^1] * x);
            double value = 0, doubt = 0;
            for (var i = 0; i < _amounts.Length; i++)
            {
                var exponent = -_years[i] * x;
                var term = _amounts[i] * Math.Exp(exponent - largest);
                value += term;
                doubt += Math.Abs(term) * (4 + Math.Abs(exponent) + Math.Abs(largest));
            }
            return Math.Abs(value) <= doubt * 1.2e-16;
        }

        internal double ValueAtRate(double rate) => ValueAndSlopeAtRate(rate).Value;

        internal (double Value, double Slope) ValueAndSlopeAtRate(double rate)
        {
            double value = 0, slope = 0;
            for (var i = 0; i < _amounts.Length; i++)
            {
                var term = _amounts[i] * Math.Pow(1 + rate, -_years[i]);
                value += term;
                slope -= _years[i] * term / (1 + rate);
            }
            return (value, slope);
        }
    }
}
