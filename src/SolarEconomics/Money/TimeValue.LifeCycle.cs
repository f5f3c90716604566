namespace SolarEconomics;

public static partial class TimeValue
{
    /// <summary>Levelised cost of energy (LCOE) from plain numbers: cost per kWh, the kWh discounted too.</summary>
    /// <param name="costs">Cost per year, year 0 first; here a cost is positive and a salvage value negative. Finite.</param>
    /// <param name="energyKwh">Energy per year, year 0 first. Unit: kWh. 0 or more, not all 0. Shape: as <paramref name="costs"/>, or another length.</param>
    /// <param name="rate">Discount rate per year, a fraction, of the costs' basis. Range: above -1, below 1.</param>
    /// <returns>Cost per kWh in the unit of the costs; nominal or real as costs and rate are.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range, or there is no energy.</exception>
    /// <remarks>Equation: Σ Cₜ(1 + r)⁻ᵗ / Σ Eₜ(1 + r)⁻ᵗ. Do not compare it with a tariff without the tariff's price path. Source: money-12.</remarks>
    public static double Lcoe(ReadOnlySpan<double> costs, ReadOnlySpan<double> energyKwh, double rate)
    {
        foreach (var kwh in Finite(energyKwh)) Require.Within(kwh, 0, double.MaxValue, "kWh");
        var energy = Npv(energyKwh, rate);
        return energy > 0 ? Npv(costs, rate) / energy : throw Throw.NoEnergy();
    }

    /// <summary>Levelised cost of energy (LCOE) of a flow of money, with what it counts.</summary>
    /// <param name="costs">Money per year, year 0 first; paid is negative as in every flow, a salvage value positive.</param>
    /// <param name="energyKwh">Energy per year, year 0 first. Unit: kWh. 0 or more, not all 0.</param>
    /// <param name="rate">Discount rate per year, nominal for a nominal flow and real for a real one.</param>
    /// <param name="energy">Which kWh these are: generated, or delivered after losses and curtailment.</param>
    /// <exception cref="BasisMismatchException">The rate is real and the flow nominal, or the reverse.</exception>
    /// <remarks>Equation: Σ Cₜ(1 + r)⁻ᵗ / Σ Eₜ(1 + r)⁻ᵗ. Source: money-12.</remarks>
    public static LevelisedCost Lcoe(MoneyFlow costs, ReadOnlySpan<double> energyKwh, Rate rate, EnergyCounted energy)
    {
        var perYear = RateOf(costs, rate);
        var perKwh = Lcoe((-costs).Span, energyKwh, perYear);
        return new LevelisedCost(costs.InMoney(perKwh), rate, energy, -Npv(costs, rate), Npv(energyKwh, rate), energyKwh.Length - 1);
    }

    /// <summary>Savings-to-investment ratio (SIR).</summary>
    /// <param name="savings">What is saved per year, upkeep taken off, year 0 first. Finite.</param>
    /// <param name="investments">What is invested per year, year 0 first: first cost and replacements positive, salvage negative. Finite.</param>
    /// <param name="rate">Discount rate per year, a fraction. Range: above -1, below 1.</param>
    /// <returns>A ratio; above 1 pays. It never ranks exclusive options.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The investment is not above 0 in present value.</exception>
    /// <remarks>Equation: PV of savings / PV of investment, replacement less salvage with the investment. Source: money-13.</remarks>
    public static double Sir(ReadOnlySpan<double> savings, ReadOnlySpan<double> investments, double rate)
    {
        var invested = Npv(investments, rate);
        return invested > 0 ? Npv(savings, rate) / invested : throw Throw.CostNotPositive(invested);
    }

    /// <summary>Net savings: present value of the savings less that of the investment.</summary>
    /// <inheritdoc cref="Sir(ReadOnlySpan{double}, ReadOnlySpan{double}, double)"/>
    /// <returns>Net savings in the unit of the amounts; above 0 pays.</returns>
    /// <remarks>Equation: PV of savings - PV of investment. Source: money-13.</remarks>
    public static double NetSavings(ReadOnlySpan<double> savings, ReadOnlySpan<double> investments, double rate) =>
        Npv(savings, rate) - Npv(investments, rate);

    /// <summary>Net savings of flows of money: present value of the savings less that of the investment.</summary>
    /// <inheritdoc cref="Sir(MoneyFlow, MoneyFlow, Rate)"/>
    /// <returns>Net savings in the flows' currency and basis; above 0 pays.</returns>
    /// <remarks>Equation: PV of savings - PV of investment; as what is invested is negative in a flow, the value of both together. Source: money-13.</remarks>
    public static Money NetSavings(MoneyFlow savings, MoneyFlow investment, Rate rate) => Npv(Require.Given(savings) + Require.Given(investment), rate);

    /// <summary>Savings-to-investment ratio (SIR) of flows of money.</summary>
    /// <param name="savings">What is saved per year, upkeep taken off: positive. Year 0 first.</param>
    /// <param name="investment">What is invested per year: paid is negative as in every flow, a salvage value positive. Year 0 first.</param>
    /// <param name="rate">Discount rate per year, nominal for nominal flows and real for real ones.</param>
    /// <returns>A ratio; above 1 pays. It never ranks exclusive options.</returns>
    /// <exception cref="BasisMismatchException">The rate is real and a flow nominal, or the reverse.</exception>
    /// <exception cref="MixedMoneyException">The flows differ in currency or basis.</exception>
    /// <remarks>Equation: PV of savings / PV of investment. Source: money-13.</remarks>
    public static double Sir(MoneyFlow savings, MoneyFlow investment, Rate rate)
    {
        ArgumentNullException.ThrowIfNull(savings);
        ArgumentNullException.ThrowIfNull(investment);
        // Their sum is not used, only its check that both are one kind of money.
        var perYear = RateOf(savings + investment, rate);
        var invested = -Discounted(investment.Span, perYear);
        return invested > 0 ? Discounted(savings.Span, perYear) / invested : throw Throw.CostNotPositive(invested);
    }

    /// <summary>Adjusted internal rate of return (AIRR): the yearly yield if savings are put to work at the discount rate.</summary>
    /// <param name="sir">Savings-to-investment ratio. Range: above 0.</param>
    /// <param name="rate">Discount and reinvestment rate per year, a fraction. Range: above -1, below 1.</param>
    /// <param name="years">Years of the study. Range: 1 to 1,000.</param>
    /// <returns>Rate per year, a fraction; nominal or real as <paramref name="rate"/> is.</returns>
    /// <remarks>Equation: (1 + r)·SIR^(1/n) - 1. Source: money-13.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is not above 0: what brings no savings has no such rate.</exception>
    public static double Airr(double sir, double rate, int years) =>
        (1 + Rate.Asked(rate)) * Math.Pow(sir is > 0 and <= 1e12 ? sir : throw Throw.RatioNotPositive(sir), 1.0 / Life(years)) - 1;

    /// <summary>Adjusted internal rate of return (AIRR) of flows of money.</summary>
    /// <param name="savings">What is saved per year, upkeep taken off: positive. Year 0 first.</param>
    /// <param name="investment">What is invested per year: paid is negative as in every flow, a salvage value positive. Year 0 first.</param>
    /// <param name="rate">Discount and reinvestment rate per year, nominal for nominal flows and real for real ones.</param>
    /// <param name="years">Years of the study. Range: 1 to 1,000.</param>
    /// <returns>Rate per year; nominal or real as <paramref name="rate"/> is.</returns>
    /// <exception cref="BasisMismatchException">The rate is real and a flow nominal, or the reverse.</exception>
    /// <exception cref="MixedMoneyException">The flows differ in currency or basis.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Savings or investment are not above 0 in present value.</exception>
    /// <remarks>Equation: (1 + r)·SIR^(1/n) - 1. Source: money-13.</remarks>
    public static Rate Airr(MoneyFlow savings, MoneyFlow investment, Rate rate, int years) => Rate.Solved(Airr(Sir(savings, investment, rate), rate.PerYear, years), rate.IsReal);

    /// <summary>Life-cycle cost as a sum of named parts: investment, energy, upkeep, replacements.</summary>
    /// <param name="rate">Discount rate per year, of the parts' basis.</param>
    /// <param name="years">Years of the study, over which the yearly cost is spread. Range: 1 to 1,000.</param>
    /// <param name="parts">Name and flow of each part; paid is negative, a salvage value positive. All of one currency and basis.</param>
    /// <exception cref="BasisMismatchException">The rate is real and a flow nominal, or the reverse.</exception>
    /// <exception cref="MixedMoneyException">Parts of different currency or basis.</exception>
    /// <exception cref="ArgumentException">No part, or one that goes on after the study.</exception>
    /// <remarks>Equation: LCC = Σ PV of parts. The parts are those of 10 CFR 436.19. Source: money-13.</remarks>
    public static LifeCycleCost LifeCycleCost(Rate rate, int years, params ReadOnlySpan<(string Name, MoneyFlow Flow)> parts)
    {
        Life(years);
        if (parts.IsEmpty) throw Throw.EmptyFlow();
        var costs = new List<(string Name, Money PresentCost)>(parts.Length);
        Money? total = null;
        foreach (var (name, flow) in parts)
        {
            if (flow.LastYear > years) throw Throw.LongerThanStudy(name, flow.LastYear, years);
            var cost = -Npv(flow, rate);
            costs.Add((name, cost));
            total = total is { } sum ? sum + cost : cost;
        }
        var all = total!.Value;
        var perYear = all with { Amount = Throw.IfTooLarge((double)all.Amount / LevelWorth(rate.PerYear, years)) };
        return new LifeCycleCost(costs, all, perYear, rate, years);
    }
}
