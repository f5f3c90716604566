using System.Globalization;

namespace SolarEconomics;

/// <summary>Dates in money along a bridge: what is still open on the day that the straight line calls paid back.</summary>
/// <remarks>Equation: D₀ = cost ÷ straight yearly value; open = cost − D₀ · yearly value; years = cost ÷ yearly value. Dates do not subtract
/// once a state is "never", so the difference is stated in money.</remarks>
internal static class PaceOfPayback
{
    /// <summary>Years to payback at a constant pace; <see langword="null"/> where it never comes.</summary>
    internal static double? Years(Money cost, Money yearly) => yearly.Amount > 0 ? (double)(cost.Amount / yearly.Amount) : null;

    /// <summary>What is still open at the straight line's date.</summary>
    internal static Money Open(Money cost, Money straightYearly, Money yearly) =>
        cost - (yearly * (cost.Amount / straightYearly.Amount));

    /// <summary>Short enough to stand under a bar: payback at this pace, and what is open at the straight line's date.</summary>
    internal static string? Words(Money cost, Money straightYearly, Money yearly, CultureInfo culture)
    {
        if (straightYearly.Amount <= 0) return null;
        var open = Wording.Whole(Open(cost, straightYearly, yearly), culture);
        return Years(cost, yearly) is { } years ? $"{Wording.Years(years, culture)}, {open} open" : $"never, {open} open";
    }
}
