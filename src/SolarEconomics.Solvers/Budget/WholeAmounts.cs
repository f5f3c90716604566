namespace SolarEconomics.Solvers;

/// <summary>Decimal amounts as whole numbers of the smallest decimal that any of them has, so that an integer program is exact.</summary>
internal sealed class WholeAmounts
{
    // Solvers sum in 64 bits; this leaves room for sums of sums.
    private const decimal Most = 1e17m;

    private readonly decimal _scale = 1;

    internal WholeAmounts(IReadOnlyList<decimal> amounts)
    {
        // Dividing by 1.000… drops the zeros behind the last digit: 12.50 has one decimal.
        var decimals = amounts.Select(a => (int)(a / 1.0000000000000000000000000000m).Scale).DefaultIfEmpty().Max();
        var sum = amounts.Sum(Math.Abs);
        for (var i = 0; i < decimals; i++)
        {
            _scale *= 10;
            if (sum > Most / _scale) throw Throw.AmountsTooLong(sum, decimals);
        }
        Whole = [.. amounts.Select(a => (long)(a * _scale))];
        Sum = Whole.Sum(Math.Abs);
    }

    /// <summary>The amounts in units of the smallest decimal.</summary>
    internal long[] Whole { get; }

    /// <summary>Sum of the amounts without their signs.</summary>
    internal long Sum { get; }

    /// <summary>The largest sum of amounts that a limit allows: never more than all of them.</summary>
    internal long Limit(decimal limit) => limit >= Sum / _scale ? Sum : (long)Math.Floor(limit * _scale);
}
