namespace SolarEconomics;

/// <summary>The lowest and the highest amount that the records allow.</summary>
/// <param name="Low">Lowest amount consistent with the records.</param>
/// <param name="High">Highest amount consistent with the records, of the same currency and basis;
/// <see langword="null"/> where the records set no upper end ("at least …, cannot tell more").</param>
public readonly record struct MoneyRange(Money Low, Money? High)
{
    /// <summary>A range of no width.</summary>
    /// <param name="amount">The one amount.</param>
    public static MoneyRange Exactly(Money amount) => new(amount, amount);

    /// <summary>Width of the range, 0 where the records tell exactly; <see langword="null"/> where there is no upper end.</summary>
    public Money? Width => High is { } high ? high - Low : null;

    /// <summary>Middle of the range; <see langword="null"/> where there is no upper end.</summary>
    public Money? Middle => High is { } high ? (Low + high) * 0.5m : null;

    /// <summary>Whether an amount lies inside, ends included.</summary>
    /// <param name="amount">Amount in the range's currency and basis.</param>
    public bool Contains(Money amount) =>
        (amount - Low).Amount >= 0 && (High is not { } high || (high - amount).Amount >= 0);

    /// <summary>The amounts that two ranges share. Both hold the truth, so they overlap.</summary>
    /// <param name="other">A range of the same currency and basis.</param>
    public MoneyRange Within(MoneyRange other)
    {
        var low = (Low - other.Low).Amount >= 0 ? Low : other.Low;
        var high = (High, other.High) switch
        {
            (null, var only) => only,
            (var only, null) => only,
            ({ } a, { } b) => (b - a).Amount >= 0 ? a : b,
        };
        return new MoneyRange(low, high);
    }
}
