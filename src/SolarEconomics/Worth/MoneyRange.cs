namespace SolarEconomics;

/// <summary>The lowest and the highest amount that the records allow. Both ends are attained by flows consistent with the records.</summary>
/// <param name="Low">Lowest amount.</param>
/// <param name="High">Highest amount, of the same currency and basis, not below <paramref name="Low"/>.</param>
public readonly record struct MoneyRange(Money Low, Money High)
{
    /// <summary>A range of no width.</summary>
    /// <param name="amount">The one amount.</param>
    public static MoneyRange Exactly(Money amount) => new(amount, amount);

    /// <summary>Width of the range; 0 where the records tell exactly.</summary>
    public Money Width => High - Low;

    /// <summary>Middle of the range.</summary>
    public Money Middle => (Low + High) * 0.5m;

    /// <summary>Whether an amount lies inside, ends included.</summary>
    /// <param name="amount">Amount in the range's currency and basis.</param>
    public bool Contains(Money amount) => (amount - Low).Amount >= 0 && (High - amount).Amount >= 0;

    /// <summary>The amounts that two ranges share.</summary>
    /// <param name="other">A range of the same currency and basis that overlaps this one.</param>
    public MoneyRange Within(MoneyRange other) => new(
        (Low - other.Low).Amount >= 0 ? Low : other.Low,
        (other.High - High).Amount >= 0 ? High : other.High);
}
