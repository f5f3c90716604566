namespace SolarEconomics.Charts;

/// <summary>A box in shares of the plot, from its lower left corner.</summary>
internal readonly record struct Box(double Left, double Low, double Right, double High)
{
    internal bool IsInside => Left >= 0 && Low >= 0 && Right <= 1 && High <= 1;

    internal bool Meets(Box other) => Left < other.Right && other.Left < Right && Low < other.High && other.Low < High;

    internal bool Holds(double x, double y) => x > Left && x < Right && y > Low && y < High;
}
