using System.Globalization;
using CsCheck;

namespace SolarEconomics.Tests;

// Oracles: by hand (roots that are written into the function), a naive twin (a hundred thousand looks), properties over random polynomials.
// Published: none, as the functions are made for their roots.
public sealed class ZeroSearchTests
{
    private static readonly DeclaredRange Range = OutlookInput.YieldFactor.Between(0, 1);
    private static readonly Outlook Outlook = YearSite.Worth().Outlook(YearSite.Plain);

    /// <summary>Roots at least 0.01 apart, a third of the distance between two first looks.</summary>
    private static readonly Gen<double[]> Roots =
        from count in Gen.Int[0, 6]
        from gaps in Gen.Double[0.01, 0.16].Array[count]
        from first in Gen.Double[0, 0.03]
        select gaps.Select((_, i) => first + gaps[..(i + 1)].Sum()).ToArray();

    [Fact]
    public void Two_crossings_between_neighbouring_looks_are_both_found() // by hand: looks at 16/32 and 17/32, roots at 0.51 and 0.52
    {
        var found = ZeroSearch.Along(Range, x => (x - 0.51) * (x - 0.52));
        Near([0.51, 0.52], found.Zeros);
        Assert.Empty(found.Unclear);
    }

    [Fact]
    public void Three_crossings_between_neighbouring_looks_are_all_found() =>
        Near([0.502, 0.51, 0.52], ZeroSearch.Along(Range, x => (x - 0.502) * (x - 0.51) * (x - 0.52)).Zeros);

    [Fact]
    public void Crossings_on_neighbouring_looks_with_one_between_are_all_found() =>
        Near([0.5, 0.51, 0.53125], ZeroSearch.Along(Range, x => (x - 0.5) * (x - 0.51) * (x - 0.53125)).Zeros);

    [Fact]
    public void A_dip_at_either_end_of_the_range_is_found()
    {
        Near([0.01, 0.02], ZeroSearch.Along(Range, x => (x - 0.01) * (x - 0.02)).Zeros);
        Near([0.98, 0.99], ZeroSearch.Along(Range, x => (x - 0.98) * (x - 0.99)).Zeros);
    }

    [Theory]
    [InlineData(2), InlineData(4), InlineData(6)]
    public void A_function_that_touches_0_gives_that_place_once(int power) =>
        Assert.Equal(0.3, Assert.Single(ZeroSearch.Along(Range, x => Math.Pow(x - 0.3, power)).Zeros), power == 2 ? 1e-6 : 0.01);

    [Fact]
    public void A_kink_that_dips_below_0_is_crossed_twice() =>
        Gen.Select(Gen.Double[0.1, 0.9], Gen.Double[1.0 / 128, 1.0 / 32]).Sample((at, depth) =>
            Near([at - depth, at + depth], ZeroSearch.Along(Range, x => Math.Abs(x - at) - depth).Zeros), iter: 5_000);

    [Fact]
    public void A_function_that_stays_just_above_0_has_no_zero() =>
        Gen.Select(Gen.Double[0, 1], Gen.Double[-8, -1]).Sample((at, power) =>
        {
            var found = ZeroSearch.Along(Range, x => ((x - at) * (x - at)) + Math.Pow(10, power));
            Assert.Empty(found.Zeros);
            Assert.Empty(found.Unclear);
        }, iter: 2_000);

    [Fact]
    public void A_function_that_is_0_all_along_is_one_zero() => Assert.Single(ZeroSearch.Along(Range, _ => 0).Zeros);

    [Fact]
    public void A_leap_over_0_is_found_and_called_a_leap() // by hand: −2 below 0.3, 5 from there on
    {
        var found = ZeroSearch.Along(Range, x => x < 0.3 ? -2 : 5);
        Assert.Equal(0.3, Assert.Single(found.Zeros), 1e-6);
        Assert.Equal(found.Zeros, found.Jumps);
        Assert.Empty(ZeroSearch.Along(Range, x => x - 0.3).Jumps);
    }

    [Fact]
    public void Roots_crowded_at_an_end_where_the_bend_changes_its_sign_are_all_found() // three of these five were found, and nothing said, before ends were drawn on
    {
        double[] roots = [0.0125, 0.029244438107488707, 0.039388969860847764, 0.1113706970651199, 0.1877875597609387];
        Near(roots, ZeroSearch.Along(Range, x => roots.Aggregate(1.0, (p, r) => p * (x - r)) * (((x + 2.744372332674134) * (x + 2.744372332674134)) + 1.1338743924385015)).Zeros, 1e-6);
    }

    [Fact]
    public void Every_root_of_a_random_polynomial_is_found_and_nothing_else_or_the_stretch_is_said() =>
        Gen.Select(Roots, Gen.Double[-5, 5], Gen.Double[0.01, 3], Gen.Bool).Sample((roots, centre, above, turned) =>
        {
            var found = ZeroSearch.Along(Range, x => roots.Aggregate(turned ? -1.0 : 1.0, (p, r) => p * (x - r)) * (((x - centre) * (x - centre)) + above));
            Assert.Empty(found.Jumps);
            if (found.Unclear.Count == 0) Near(roots, found.Zeros, 1e-6);
            else Assert.All(roots, r => Assert.True(found.Zeros.Any(z => Math.Abs(z - r) <= 1e-6) || found.Unclear.Any(u => r >= u.Low && r <= u.High)));
        }, iter: 20_000);

    [Fact]
    public void Roots_that_are_not_crowded_leave_nothing_unclear() =>
        Gen.Select(Gen.Double[0.05, 0.95], Gen.Double[0.05, 0.95], Gen.Double[0.05, 0.95]).Sample((a, b, c) =>
            Assert.Empty(ZeroSearch.Along(Range, x => (x - a) * (x - b) * (x - c)).Unclear), iter: 2_000);

    [Fact]
    public void A_pair_of_roots_however_close_is_found_twice() =>
        Gen.Select(Gen.Double[0.001, 0.99], Gen.Double[-4.5, -2], Gen.Double[-1, 2]).Sample((at, power, other) =>
        {
            var next = at + Math.Pow(10, power);
            // A root within rounding of the range's end may count as inside or outside.
            if (Math.Abs(other - at) < 0.03 || Math.Abs(other) < 1e-6 || Math.Abs(other - 1) < 1e-6) return;
            double[] roots = other is >= 0 and <= 1 ? [.. new[] { at, next, other }.Order()] : [at, next];
            Near(roots, ZeroSearch.Along(Range, x => (x - at) * (x - next) * (x - other)).Zeros, 1e-6);
        }, iter: 5_000);

    [Fact]
    public void Random_polynomials_cross_where_a_hundred_thousand_looks_see_them_cross() =>
        Gen.Double[-1, 1].Array[2, 7].Sample(factors =>
        {
            double At(double x) => factors.Aggregate(0.0, (sum, f) => (sum * x) + f);
            var values = Enumerable.Range(0, 100_001).Select(i => At(i / 1e5)).ToArray();
            var naive = Enumerable.Range(0, 100_000).Where(i => values[i] * values[i + 1] < 0 && Math.Abs(values[i] - values[i + 1]) > 1e-11).ToList(); // flatter is rounding
            var found = ZeroSearch.Along(Range, At);
            foreach (var i in naive) Assert.Contains(found.Zeros, z => Math.Abs(z - ((i + 0.5) / 1e5)) <= 1e-5);
            foreach (var z in found.Zeros) Assert.InRange(Math.Abs(At(z)), 0, 1e-9);
        }, iter: 300);

    [Fact]
    public void What_there_was_no_time_to_look_into_is_said() // a wave that touches 0 twelve times
    {
        static double Wave(double x) => 1 + Math.Cos(2 * Math.PI * 12 * x);
        var found = ZeroSearch.Along(Range, Wave);
        for (var i = 0; i < 12; i++) Assert.Contains(found.Unclear, u => u.Low <= (i + 0.5) / 12 && u.High >= (i + 0.5) / 12);
        var even = Outlook.BreakEven(Range, new OutlookMeasure("wave", o => Wave(o.Assumptions.YieldFactor)));
        Assert.Equal(found.Unclear, even.Unclear);
        Assert.Contains(even.Say(CultureInfo.InvariantCulture).Notes, n => n.StartsWith("Not ruled out: two more values between ", StringComparison.Ordinal));
    }

    [Fact]
    public void A_break_even_says_how_closely_it_looked_and_where_the_amount_leaps()
    {
        var even = Outlook.BreakEven(Range, new OutlookMeasure("amount", o => o.Assumptions.YieldFactor < 0.3 ? -2 : 5));
        var notes = even.Say(CultureInfo.InvariantCulture).Notes;
        Assert.Equal($"Looked at {even.Looks} values, closer where the amount bends near 0. Two crossings between neighbouring values are missed only where it bends over four times more sharply than around them.", notes[1]);
        Assert.Equal("At 30.0 % the amount leaps over 0, so that no value gives just 0.", notes[2]);
    }

    [Fact]
    public void A_measure_that_is_no_number_is_refused_with_the_place() =>
        Assert.Equal("future generation at 0.5: found the amount NaN, expected a finite number. Search a range that leaves this value out, or give a measure that has an amount there.",
            Assert.Throws<ArgumentException>(() => ZeroSearch.Along(Range, x => x == 0.5 ? double.NaN : 1)).Message);

    /// <summary>Steep crossings to 1e-9; where the slope is slight, to the millionth of the range that the search tells apart.</summary>
    private static void Near(IReadOnlyList<double> expected, IReadOnlyList<double> found, double tolerance = 1e-9)
    {
        Assert.Equal(expected.Count, found.Count);
        for (var i = 0; i < expected.Count; i++) Assert.Equal(expected[i], found[i], tolerance);
    }
}
