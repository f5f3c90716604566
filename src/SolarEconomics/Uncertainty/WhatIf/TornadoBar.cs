namespace SolarEconomics;

/// <summary>What one input does while all others stay: the amount at both ends of its declared range.</summary>
/// <param name="Range">The input and its ends.</param>
/// <param name="AtLow">Amount with the input at its low end.</param>
/// <param name="AtHigh">Amount with the input at its high end.</param>
/// <param name="Base">The input as the outlook has it.</param>
public sealed record TornadoBar(DeclaredRange Range, Money AtLow, Money AtHigh, double Base)
{
    /// <summary>Length of the bar: the difference of the two ends without a sign.</summary>
    public Money Swing => AtHigh.Amount >= AtLow.Amount ? AtHigh - AtLow : AtLow - AtHigh;
}
