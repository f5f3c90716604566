namespace SolarEconomics;

/// <summary>Sums of two series over the intervals that both have, kept so that means and correlation follow.</summary>
internal struct Overlap
{
    private double _meanA;
    private double _meanB;
    private double _squaresA;
    private double _squaresB;
    private double _products;

    internal int Count { get; private set; }

    internal readonly double SumA => _meanA * Count;

    internal readonly double SumB => _meanB * Count;

    /// <summary>Sum of squares of the first around its mean.</summary>
    internal readonly double SquaresA => _squaresA;

    /// <summary>Correlation; 0 where one of them does not vary.</summary>
    internal readonly double Correlation => _squaresA <= 0 || _squaresB <= 0 ? 0 : _products / Math.Sqrt(_squaresA * _squaresB);

    /// <summary>Takes one more pair; sums of squares around the mean so far, which loses no digits on long records.</summary>
    internal void Add(double a, double b)
    {
        Count++;
        var (fromA, fromB) = (a - _meanA, b - _meanB);
        _meanA += fromA / Count;
        _meanB += fromB / Count;
        _squaresA += fromA * (a - _meanA);
        _squaresB += fromB * (b - _meanB);
        _products += fromA * (b - _meanB);
    }
}
