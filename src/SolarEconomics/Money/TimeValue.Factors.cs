using System.Runtime.CompilerServices;

namespace SolarEconomics;

/// <content>Factors as the tables of engineering economics print them; years are 1 to 1,000, rates per year.</content>
public static partial class TimeValue
{
    /// <summary>Single present worth factor (P/F): what 1 at the end of year n is worth now.</summary>
    /// <param name="rate">Rate per year, a fraction. Range: above -1, below 1.</param>
    /// <param name="years">Years. Range: 1 to 1,000.</param>
    /// <remarks>Equation: (1 + i)⁻ⁿ. Source: money-2.</remarks>
    public static double SinglePresentWorth(double rate, int years) => Math.Pow(1 + Rate.Asked(rate), -Life(years));

    /// <summary>Compound amount factor (F/P): what 1 now is worth at the end of year n.</summary>
    /// <inheritdoc cref="SinglePresentWorth"/>
    /// <remarks>Equation: (1 + i)ⁿ. Source: money-2.</remarks>
    public static double CompoundAmount(double rate, int years) => Math.Pow(1 + Rate.Asked(rate), Life(years));

    /// <summary>Uniform present worth factor (P/A): what 1 at the end of each of n years is worth now.</summary>
    /// <inheritdoc cref="SinglePresentWorth"/>
    /// <remarks>Equation: (1 - (1 + i)⁻ⁿ) / i; n at rate 0. Source: money-2.</remarks>
    public static double UniformPresentWorth(double rate, int years) =>
        LevelWorth(Rate.Asked(rate), Life(years));

    /// <summary>Capital recovery factor (A/P): what is paid at the end of each of n years for 1 now.</summary>
    /// <inheritdoc cref="SinglePresentWorth"/>
    /// <remarks>Equation: i / (1 - (1 + i)⁻ⁿ); 1/n at rate 0. Source: money-2.</remarks>
    public static double CapitalRecovery(double rate, int years) => 1 / UniformPresentWorth(rate, years);

    /// <summary>Uniform compound amount factor (F/A): what 1 at the end of each of n years has become after the last.</summary>
    /// <inheritdoc cref="SinglePresentWorth"/>
    /// <remarks>Equation: ((1 + i)ⁿ - 1) / i; n at rate 0. Source: money-2.</remarks>
    public static double UniformCompoundAmount(double rate, int years) => Growth.SumOfPowers(Rate.Asked(rate), Life(years));

    /// <summary>Sinking fund factor (A/F): what is laid by at the end of each of n years to have 1 after the last.</summary>
    /// <inheritdoc cref="SinglePresentWorth"/>
    /// <remarks>Equation: i / ((1 + i)ⁿ - 1); 1/n at rate 0. Source: money-2.</remarks>
    public static double SinkingFund(double rate, int years) => 1 / UniformCompoundAmount(rate, years);

    /// <summary>Gradient present worth factor (P/G): what 0, 1, 2, … at the ends of n years is worth now.</summary>
    /// <inheritdoc cref="SinglePresentWorth"/>
    /// <remarks>Equation: Σₖ (k - 1) / (1 + i)ᵏ; summed, as the closed form loses all digits at small rates. Source: money-2.</remarks>
    public static double GradientPresentWorth(double rate, int years)
    {
        var factor = 1 / (1 + Rate.Asked(rate));
        var sum = 0.0;
        for (var year = Life(years); year >= 1; year--) sum = (sum + (year - 1)) * factor;
        return sum;
    }

    /// <summary>Gradient uniform factor (A/G): the level yearly amount that is worth as much as 0, 1, 2, …</summary>
    /// <inheritdoc cref="SinglePresentWorth"/>
    /// <remarks>Equation: (P/G) · (A/P). Source: money-2.</remarks>
    public static double GradientUniform(double rate, int years) =>
        GradientPresentWorth(rate, years) * CapitalRecovery(rate, years);

    /// <summary>Present worth of a yearly amount that grows: 1 at the end of year 1, 1 + g at the end of year 2, …</summary>
    /// <param name="rate">Rate per year, a fraction. Range: above -1, below 1.</param>
    /// <param name="growth">Growth per year, a fraction, of the same basis. Range: above -1, below 1; it may equal the rate.</param>
    /// <param name="years">Years. Range: 1 to 1,000.</param>
    /// <remarks>Equation: Σₖ (1 + g)ᵏ⁻¹ / (1 + r)ᵏ. Source: money-2.</remarks>
    public static double GrowingPresentWorth(double rate, double growth, int years)
    {
        // The ratio of neighbours less 1, so that growth near the rate keeps its digits.
        var step = (Rate.Asked(growth) - Rate.Asked(rate)) / (1 + rate);
        return Growth.SumOfPowers(step, Life(years)) / (1 + rate);
    }

    /// <summary>Present worth of a yearly amount in today's prices: 1 + g at the end of year 1, (1 + g)² at the end of year 2, …</summary>
    /// <inheritdoc cref="GrowingPresentWorth"/>
    /// <remarks>Equation: Σₖ ((1 + g) / (1 + r))ᵏ. Energy handbooks print this one, as the price is today's. Source: money-2.</remarks>
    public static double EscalatedPresentWorth(double rate, double growth, int years) =>
        GrowingPresentWorth(rate, growth, years) * (1 + growth);

    /// <summary>Present worth of 1 at the end of every year for ever, growing.</summary>
    /// <param name="rate">Rate per year, a fraction. Range: above <paramref name="growth"/>, below 1.</param>
    /// <param name="growth">Growth per year, a fraction. Range: above -1, below <paramref name="rate"/>. Default: 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The growth is not below the rate: the sum has no end.</exception>
    /// <remarks>Equation: 1 / (r - g). Source: money-2.</remarks>
    public static double PerpetuityPresentWorth(double rate, double growth = 0) =>
        Rate.Asked(growth) < Rate.Asked(rate) ? 1 / (rate - growth) : throw Throw.EndlessGrowth(rate, growth);

    /// <summary>Equivalent annual worth of a present worth: options of unequal lives are ranked by it.</summary>
    /// <param name="presentWorth">Value now, in any unit; finite.</param>
    /// <param name="rate">Rate per year, a fraction. Range: above -1, below 1.</param>
    /// <param name="years">Life. Range: 1 to 1,000.</param>
    /// <returns>Level amount at the end of each year, in the same unit.</returns>
    /// <remarks>Equation: PW · (A/P). Source: money-2.</remarks>
    public static double EquivalentAnnualWorth(double presentWorth, double rate, int years) =>
        Require.Finite(presentWorth) * CapitalRecovery(rate, years);

    /// <summary>Equivalent annual worth of a yearly flow of money over its own life.</summary>
    /// <param name="flow">Amounts per year, year 0 first; the last year is the life. Shape: 2 values or more.</param>
    /// <param name="rate">Discount rate per year, nominal for a nominal flow and real for a real one.</param>
    /// <returns>Level amount at the end of each year, in the flow's currency and basis.</returns>
    /// <exception cref="BasisMismatchException">The rate is real and the flow nominal, or the reverse.</exception>
    /// <remarks>Equation: NPV · (A/P). Source: money-2.</remarks>
    public static Money EquivalentAnnualWorth(MoneyFlow flow, Rate rate) =>
        flow.InMoney(Discounted(flow, rate) / LevelWorth(rate.PerYear, Life(flow.LastYear)));

    /// <summary>The real rate in a nominal one (Fisher).</summary>
    /// <param name="nominalRate">Nominal rate per year, a fraction. Range: above -1, below 1.</param>
    /// <param name="inflation">Inflation per year, a fraction. Range: above -1, below 1.</param>
    /// <remarks>Equation: (1 + nominal) / (1 + inflation) - 1; the difference of the two is only near it. Source: money-3.</remarks>
    public static double RealRate(double nominalRate, double inflation) =>
        (Rate.Asked(nominalRate) - Rate.Asked(inflation)) / (1 + inflation);

    /// <summary>The nominal rate of a real one (Fisher).</summary>
    /// <param name="realRate">Real rate per year, a fraction. Range: above -1, below 1.</param>
    /// <param name="inflation">Inflation per year, a fraction. Range: above -1, below 1.</param>
    /// <remarks>Equation: (1 + real) · (1 + inflation) - 1. Source: money-3.</remarks>
    public static double NominalRate(double realRate, double inflation) =>
        Rate.Asked(realRate) + Rate.Asked(inflation) + realRate * inflation;

    private static double LevelWorth(double rate, double years) => rate == 0 ? years : -Growth.OverPeriods(rate, -years) / rate;

    private static int Life(int years, [CallerArgumentExpression(nameof(years))] string name = "") =>
        years is >= 1 and <= 1000 ? years : throw Throw.BadLife(years, name);
}
