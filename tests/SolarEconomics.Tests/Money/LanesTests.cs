namespace SolarEconomics.Tests;

/// <summary>Vectors of one, four and eight numbers against plain arithmetic: the narrow one runs where a processor has no wide vectors, so it is tested here, not by chance.</summary>
public sealed class LanesTests
{
    private static readonly double[] Left = [3, -2.5, 0, 7, 1e-3, -4, 12, 0.5];
    private static readonly double[] Right = [2, 4, -1, 7, 5, -8, 0.25, -0.5];

    [Fact]
    public void One_number_calculates_as_the_processor_does() => Check<Lanes1>();

    [Fact]
    public void Four_numbers_calculate_as_one_does() => Check<Lanes4>();

    [Fact]
    public void Eight_numbers_calculate_as_one_does() => Check<Lanes8>();

    private static void Check<T>()
        where T : struct, ILanes<T>
    {
        Each<T>((a, b) => a + b, (x, y) => x + y);
        Each<T>((a, b) => a - b, (x, y) => x - y);
        Each<T>((a, b) => a * b, (x, y) => x * y);
        Each<T>((a, b) => a / b, (x, y) => x / y);
        Each<T>(T.Max, Math.Max);
        Each<T>(T.MaxNative, Math.Max);
        Each<T>(T.MinNative, Math.Min);
        Each<T>(T.CopySign, Math.CopySign);
        Each<T>((a, _) => T.Abs(a), (x, _) => Math.Abs(x));
        Each<T>((a, _) => T.SquareRoot(T.Abs(a)), (x, _) => Math.Sqrt(Math.Abs(x)));
        Each<T>((a, b) => T.MultiplyAdd(a, b, T.Of(2)), (x, y) => Math.FusedMultiplyAdd(x, y, 2));
        Each<T>((a, b) => T.Select(T.LessThan(a, b), a, b), (x, y) => x < y ? x : y);
        Each<T>((a, b) => T.Select(T.Not(T.LessThan(a, b)), a, b), (x, y) => x < y ? y : x);
        Each<T>((a, b) => T.Select(T.Equal(a, b), T.Of(1), T.Zero), (x, y) => x == y ? 1 : 0);
        Each<T>((a, b) => T.Select(T.LessThan(a, b) | T.Equal(a, b), T.Of(1), T.Zero), (x, y) => x <= y ? 1 : 0);
        Each<T>((a, b) => T.Select(T.LessThan(a, b) & T.LessThan(a, T.Zero), T.Of(1), T.Zero), (x, y) => x < y && x < 0 ? 1 : 0);
        // A mask taken over a number keeps it or leaves 0.
        Each<T>((a, b) => a & T.LessThan(a, b), (x, y) => x < y ? x : 0);
        Assert.True(T.All(T.Equal(T.Of(5), T.Of(5))));
        Assert.False(T.All(T.Equal(T.Of(5), T.Of(6))));
        Assert.False(T.All(T.Not(T.LessThan(T.Of(5), T.Of(6)))));
    }

    private static void Each<T>(Func<T, T, T> inLanes, Func<double, double, double> plain)
        where T : struct, ILanes<T>
    {
        var results = new double[T.Width];
        for (var at = 0; at + T.Width <= Left.Length; at += T.Width)
        {
            inLanes(T.Load(Left.AsSpan(at)), T.Load(Right.AsSpan(at))).CopyTo(results);
            Assert.Equal(Enumerable.Range(at, T.Width).Select(i => plain(Left[i], Right[i])), results);
        }
    }
}
