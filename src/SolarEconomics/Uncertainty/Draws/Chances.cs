using System.Globalization;

namespace SolarEconomics;

/// <summary>An amount of money over many draws: percentiles, chances, and how far each is off by chance.</summary>
/// <param name="What">The amount in words: <c>net present value</c>.</param>
/// <param name="Currency">Currency of the draws.</param>
/// <param name="Values">The draws.</param>
/// <param name="Options">Seed and number of draws: the same options give the same draws.</param>
public sealed record Chances(string What, Currency Currency, DrawnValues Values, DrawOptions Options) : IFinding
{
    /// <summary>What was assumed, one per line.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>Whether only the first draws were taken and the others are still at work.</summary>
    public bool IsPreview { get; internal init; }

    /// <summary>The 10th percentile: one draw in ten lies below.</summary>
    public Money Low => At(0.1);

    /// <summary>The median: half of the draws lie below.</summary>
    public Money Middle => At(0.5);

    /// <summary>The 90th percentile: nine draws in ten lie below.</summary>
    public Money High => At(0.9);

    /// <summary>Share of draws that do not lose: 0 or more. Range: 0 to 1.</summary>
    public double ChanceOfGain => Values.ShareAtLeast(0);

    /// <summary>Whether the draws ended because the mean was precise enough.</summary>
    public bool IsPreciseEnough => Options.StopAtStandardError is { } enough && Values.StandardError <= enough;

    /// <summary>A percentile in money.</summary>
    /// <param name="share">Share of draws below. Range: 0 to 1.</param>
    public Money At(double share) => InMoney(Values.Percentile(share));

    /// <summary>The odds that this beats another, draw by draw.</summary>
    /// <param name="other">Drawn from the same seed and as many times, so that both meet the same weather and prices.</param>
    /// <exception cref="ArgumentException">Seeds or numbers of draws differ.</exception>
    /// <exception cref="MixedMoneyException">The currencies differ.</exception>
    public PairedChances Against(Chances other)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (Options.Seed != other.Options.Seed || Values.Count != other.Values.Count) throw Throw.NotPaired(Options.Seed, Values.Count, other.Options.Seed, other.Values.Count);
        if (Currency != other.Currency) throw Throw.MixedMoney(Middle, other.Middle);
        var difference = new double[Values.Count];
        for (var i = 0; i < difference.Length; i++) difference[i] = Values.Values[i] - other.Values.Values[i];
        return new PairedChances(this, other, new DrawnValues(difference, difference.Length));
    }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture) => ChanceWords.Say(this, culture);

    internal Money InMoney(double amount) =>
        Money.Nominal(Math.Round(Throw.IfTooLarge(amount), Currency.MinorDigits, MidpointRounding.AwayFromZero), Currency);
}
