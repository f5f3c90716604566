namespace SolarEconomics;

/// <summary>An input and the two ends it is moved between. The ends are declared, not guessed: a bar is as long as its range is honest.</summary>
public sealed record DeclaredRange
{
    /// <summary>An input and its ends.</summary>
    /// <param name="input">The input.</param>
    /// <param name="low">Low end.</param>
    /// <param name="high">High end, above <paramref name="low"/>.</param>
    /// <exception cref="ArgumentException">The ends are not in order, not whole where the input is, or beyond what an outlook takes; a rate above 1 is asked back as per cent.</exception>
    public DeclaredRange(OutlookInput input, double low, double high)
    {
        ArgumentNullException.ThrowIfNull(input);
        if (!(low < high && double.IsFinite(low) && double.IsFinite(high))) throw Throw.EndsNotInOrder(low, high);
        if (low < input.Lowest || high > input.Highest)
        {
            var beyond = low < input.Lowest ? low : high;
            throw input.Unit == InputUnit.SharePerYear ? Throw.RateAsPercent(input.Name, beyond) : Throw.RangeTooFar(input, low, high);
        }
        if (input.IsWhole && (low != Math.Floor(low) || high != Math.Floor(high))) throw Throw.EndsNotWhole(input, low, high);
        (Input, Low, High) = (input, low, high);
    }

    /// <summary>The input.</summary>
    public OutlookInput Input { get; }

    /// <summary>Low end.</summary>
    public double Low { get; }

    /// <summary>High end.</summary>
    public double High { get; }

    /// <summary>Values from the low to the high end, evenly apart; whole ones once each where the input takes no others.</summary>
    internal double[] Steps(int count)
    {
        var steps = Enumerable.Range(0, count).Select(i => i == count - 1 ? High : Low + ((High - Low) * i / (count - 1)));
        return Input.IsWhole ? [.. steps.Select(v => Math.Round(v)).Distinct()] : [.. steps];
    }
}
