using NodaTime;

namespace SolarEconomics;

/// <summary>How prices move from the records' end on: growth per year, steps known ahead, their level, the end of a guaranteed rate, tax on what is paid for export.</summary>
/// <remarks>Equation: factor = level · (1 + g)^years · Π of the steps before the day.</remarks>
internal readonly struct PricePath
{
    private readonly Assumptions _assumptions;
    private readonly double _import;
    private readonly double _feedIn;
    private readonly double _cost;

    internal PricePath(Assumptions assumptions)
    {
        _assumptions = assumptions;
        _import = Growth.LogOnePlus(assumptions.PriceGrowth);
        _feedIn = Growth.LogOnePlus(assumptions.FeedInGrowth);
        _cost = Growth.LogOnePlus(assumptions.CostGrowth);
    }

    internal double Cost(double yearsAhead) => Math.Exp(_cost * yearsAhead);

    internal double Import(double yearsAhead, LocalDate day)
    {
        var factor = _assumptions.ImportPriceLevel * Math.Exp(_import * yearsAhead);
        foreach (var step in _assumptions.PriceSteps) if (step.From <= day) factor *= step.ImportFactor;
        return factor;
    }

    /// <summary>What is left of a month's export money: after the guarantee its kWh are paid at the price then, and tax is taken off.</summary>
    internal double FeedIn(double atLatestPrice, double exportedKwh, double yearsAhead, LocalDate day)
    {
        var factor = Math.Exp(_feedIn * yearsAhead);
        var isGuaranteed = _assumptions.FeedInGuarantee is not { } guarantee || day < guarantee.Until;
        foreach (var step in _assumptions.PriceSteps) if (step.From <= day) factor *= step.FeedInFactor;
        var paid = isGuaranteed ? atLatestPrice * _assumptions.FeedInPriceLevel : exportedKwh * (double)_assumptions.FeedInGuarantee!.PricePerKwhAfter;
        return paid * factor * (1 - _assumptions.FeedInTaxRate);
    }
}
