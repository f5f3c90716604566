namespace SolarEconomics;

/// <summary>A plan of yearly money whose numbers are not known for sure: paid now, then a value each year that grows with prices and falls with age.</summary>
/// <remarks>
/// Equation: NPV = −I + Σₜ V (1 + w zₜ) ((1 + g)(1 − a))^(t − 1) / (1 + r)ᵗ, t from 1 to n: each year's value at its end. Draws are of two kinds: I, V, g and a are
/// drawn once for all years, the weather zₜ for each year by itself. Nominal. Immutable, safe between threads.
/// </remarks>
public sealed record YearlyPlan
{
    /// <summary>Currency of every amount.</summary>
    public required Currency Currency { get; init; }

    /// <summary>Paid now, as a positive amount.</summary>
    public required IDistribution Investment { get; init; }

    /// <summary>Value of the first year, running costs taken off.</summary>
    public required IDistribution YearlyValue { get; init; }

    /// <summary>Growth of the value's price per year, a fraction. Default: none, for sure.</summary>
    public IDistribution Growth { get; init; } = Certain.Of(0);

    /// <summary>Share of what is left that each year loses to age, a fraction. Default: none, for sure.</summary>
    public IDistribution Ageing { get; init; } = Certain.Of(0);

    /// <summary>Spread of each year's value by itself (weather), relative to it. Range: 0 to 1. Default: 0.</summary>
    public double WeatherSd { get; init; }

    /// <summary>Discount rate per year, a fraction. Range: −0.5 to 1. Default: 0.04.</summary>
    public double DiscountRate { get; init; } = 0.04;

    /// <summary>Years of the plan. Range: 1 to 100. Default: 25.</summary>
    public int Years { get; init; } = 25;

    /// <summary>Which of <see cref="Investment"/>, <see cref="YearlyValue"/>, <see cref="Growth"/> and <see cref="Ageing"/> move together. Default: none.</summary>
    public IReadOnlyList<CorrelatedPair> Pairs { get; init; } = [];

    /// <summary>Net present value over many draws.</summary>
    /// <param name="options">How many draws, from which seed; <see langword="null"/> for the defaults.</param>
    /// <param name="progress">Told the share of draws taken.</param>
    /// <param name="cancel">Stops within a chunk of draws, well under 100 ms.</param>
    /// <exception cref="ArgumentException">A number is out of range, or the correlations contradict each other.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public Chances HowSure(DrawOptions? options = null, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        options = (options ?? new DrawOptions()).Checked();
        var plan = Checked();
        var npv = GC.AllocateUninitializedArray<double>(options.MostDraws);
        var root = CorrelationRoot.Of(PlanDraws.Names, Pairs);
        var draws = DrawRun.Take(options, (first, count) => PlanDraws.Fill(plan, root, options.Seed, first, npv.AsSpan(first, count)), npv, progress, cancel);
        return new Chances("net present value", Currency, new DrawnValues(npv, draws), options) { Notes = [.. PlanNotes()] };
    }

    private YearlyPlan Checked()
    {
        Require.Within(Years, 1, 100, "years");
        Require.Fraction(WeatherSd);
        if (DiscountRate is not (>= -0.5 and <= 1)) throw Throw.RateAsPercent(nameof(DiscountRate), DiscountRate);
        if (Growth.Mean is not (>= -0.5 and <= 1)) throw Throw.RateAsPercent(nameof(Growth), Growth.Mean);
        if (Ageing.Mean is not (>= 0 and <= 0.5)) throw Throw.ReachesTooFar(nameof(Ageing), Ageing.Mean, "a share lost per year from 0 to 0.5; 0.6 % is written 0.006");
        if (!(Investment.Mean >= 0)) throw Throw.ReachesTooFar(nameof(Investment), Investment.Mean, "0 or more: what is paid is given without a sign");
        return this;
    }

    private IEnumerable<string> PlanNotes()
    {
        yield return FormattableString.Invariant($"{Wording.CountInMessage(Years, "year")}, each year's value at its end, discounted at {DiscountRate * 100:0.##} % a year.");
        if (WeatherSd > 0) yield return FormattableString.Invariant($"Each year's weather by itself, {WeatherSd * 100:0.#} % spread; all else drawn once for all years.");
        foreach (var pair in Pairs) yield return FormattableString.Invariant($"{pair.First} and {pair.Second} move together (correlation {pair.Correlation:0.##}).");
    }
}
