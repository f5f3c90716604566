using NodaTime;

namespace SolarEconomics;

/// <summary>Prices of energy by the hour or half hour, as a market publishes them: each holds from its start until the next one's.</summary>
/// <remarks>Immutable, so safe to share between threads. Prices may be below 0.</remarks>
public sealed partial class PriceSeries
{
    private readonly long[] _starts;
    private readonly double[] _prices;

    private PriceSeries(string name, long[] starts, double[] prices, long end)
    {
        Name = name;
        _starts = starts;
        _prices = prices;
        EndSecond = end;
    }

    /// <summary>Where the prices come from, for messages.</summary>
    public string Name { get; }

    /// <summary>Number of prices.</summary>
    public int Count => _starts.Length;

    /// <summary>Start of the first price.</summary>
    public Instant Start => Instant.FromUnixTimeSeconds(_starts[0]);

    /// <summary>End of the last price, excluded: it holds as long as the one before it.</summary>
    public Instant End => Instant.FromUnixTimeSeconds(EndSecond);

    private long EndSecond { get; }

    /// <summary>Prices from parts.</summary>
    /// <param name="name">Where they come from.</param>
    /// <param name="prices">Start and price of each, at least two, ascending; whole seconds.</param>
    /// <exception cref="ArgumentException">Fewer than two, not ascending, or a price that is no finite number.</exception>
    public static PriceSeries Of(string name, IReadOnlyList<(Instant Start, double Price)> prices)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(prices);
        if (prices.Count < 2) throw Throw.TooFewPrices(name, prices.Count);
        var starts = prices.Select(p => p.Start.ToUnixTimeSeconds()).ToArray();
        for (var i = 0; i < starts.Length; i++)
            if (!double.IsFinite(prices[i].Price) || (i > 0 && starts[i] <= starts[i - 1])) throw Throw.PricesOutOfOrder(name, prices[i].Start);
        return new PriceSeries(name, starts, [.. prices.Select(p => p.Price)], (2 * starts[^1]) - starts[^2]);
    }

    /// <summary>Mean price over some seconds, each price by its time.</summary>
    /// <exception cref="TariffException">The series does not hold all of that time.</exception>
    internal double Mean(long from, long until)
    {
        if (from < _starts[0] || until > EndSecond) throw Throw.NoPriceAt(this, from < _starts[0] ? from : until);
        var at = Array.BinarySearch(_starts, from);
        if (at < 0) at = ~at - 1;
        var sum = 0.0;
        for (var second = from; second < until; at++)
        {
            var next = Math.Min(until, at + 1 < _starts.Length ? _starts[at + 1] : EndSecond);
            sum += _prices[at] * (next - second);
            second = next;
        }
        return sum / (until - from);
    }
}
