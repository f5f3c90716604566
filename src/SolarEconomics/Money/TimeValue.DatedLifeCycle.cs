using NodaTime;

namespace SolarEconomics;

/// <content>Life-cycle measures of dated payments: as those of yearly flows, with years told by a day count.</content>
public static partial class TimeValue
{
    /// <summary>Levelised cost of energy (LCOE) of dated payments, with what it counts.</summary>
    /// <param name="costs">The payments; paid is negative as in every flow, a salvage value positive.</param>
    /// <param name="energyKwh">Energy and the day for which it stands, such as the middle of its month; any order. Unit: kWh. 0 or more, not all 0.</param>
    /// <param name="rate">Discount rate per year, nominal for a nominal flow and real for a real one.</param>
    /// <param name="energy">Which kWh these are: generated, or delivered after losses and curtailment.</param>
    /// <param name="count">How days become years. Default: actual days over 365.</param>
    /// <returns>The cost per kWh; costs and kWh are discounted to the first day of either.</returns>
    /// <exception cref="BasisMismatchException">The rate is real and the flow nominal, or the reverse.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Energy is below 0 or not finite, or there is none.</exception>
    /// <remarks>Equation: Σ Cₖ(1 + r)^-τₖ / Σ Eₖ(1 + r)^-τₖ. Source: money-12, its years told by days.</remarks>
    public static LevelisedCost Lcoe(
        DatedMoneyFlow costs, ReadOnlySpan<(LocalDate Day, double Kwh)> energyKwh, Rate rate, EnergyCounted energy, DayCount count = DayCount.Actual365)
    {
        var perYear = RateOf(costs, rate);
        if (energyKwh.IsEmpty) throw Throw.NoEnergy();
        var (from, to) = (costs.FirstDate, costs.LastDate);
        foreach (var (day, kwh) in energyKwh)
        {
            Require.Within(kwh, 0, double.MaxValue, "kWh");
            (from, to) = (LocalDate.Min(from, day), LocalDate.Max(to, day));
        }
        var discounted = 0.0;
        foreach (var (day, kwh) in energyKwh) discounted += kwh * Math.Pow(1 + perYear, -YearFraction(from, day, count));
        if (!double.IsFinite(discounted)) throw Throw.NoFiniteValue(perYear);
        if (discounted == 0) throw Throw.NoEnergy();
        var cost = -ValueOn(from, costs, perYear, count);
        return new LevelisedCost(costs.InMoney(cost / discounted), rate, energy, costs.InMoney(cost), discounted, YearsBegun(from, to))
        {
            FirstDay = from, LastDay = to, DaysCounted = count,
        };
    }

    /// <summary>Net savings of dated payments: present value of the savings less that of the investment, at the first day of either.</summary>
    /// <inheritdoc cref="Sir(DatedMoneyFlow, DatedMoneyFlow, Rate, DayCount)"/>
    /// <returns>Net savings in the flows' currency and basis; above 0 pays.</returns>
    /// <remarks>Equation: PV of savings - PV of investment; as what is invested is negative in a flow, the value of both together. Source: money-13.</remarks>
    public static Money NetSavings(DatedMoneyFlow savings, DatedMoneyFlow investment, Rate rate, DayCount count = DayCount.Actual365) =>
        Xnpv(Both(savings, investment), rate, count);

    /// <summary>Savings-to-investment ratio (SIR) of dated payments.</summary>
    /// <param name="savings">What is saved, upkeep taken off: positive.</param>
    /// <param name="investment">What is invested: paid is negative as in every flow, a salvage value positive.</param>
    /// <param name="rate">Discount rate per year, nominal for nominal flows and real for real ones.</param>
    /// <param name="count">How days become years. Default: actual days over 365.</param>
    /// <returns>A ratio of values at the first day of either; above 1 pays. It never ranks exclusive options.</returns>
    /// <exception cref="BasisMismatchException">The rate is real and a flow nominal, or the reverse.</exception>
    /// <exception cref="MixedMoneyException">The flows differ in currency or basis.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The investment is not above 0 in present value.</exception>
    /// <remarks>Equation: PV of savings / PV of investment, replacement less salvage with the investment. Source: money-13.</remarks>
    public static double Sir(DatedMoneyFlow savings, DatedMoneyFlow investment, Rate rate, DayCount count = DayCount.Actual365)
    {
        var both = Both(savings, investment);
        var perYear = RateOf(both, rate);
        var invested = -ValueOn(both.FirstDate, investment, perYear, count);
        return invested > 0 ? ValueOn(both.FirstDate, savings, perYear, count) / invested : throw Throw.CostNotPositive(invested);
    }

    /// <summary>Adjusted internal rate of return (AIRR) of dated payments, from the first day of either flow to the end of the study.</summary>
    /// <param name="savings">What is saved, upkeep taken off: positive.</param>
    /// <param name="investment">What is invested: paid is negative as in every flow, a salvage value positive.</param>
    /// <param name="rate">Discount and reinvestment rate per year, nominal for nominal flows and real for real ones.</param>
    /// <param name="end">The day on which the study ends, no earlier than the last payment and later than the first.</param>
    /// <param name="count">How days become years. Default: actual days over 365.</param>
    /// <returns>Rate per year; nominal or real as <paramref name="rate"/> is.</returns>
    /// <exception cref="BasisMismatchException">The rate is real and a flow nominal, or the reverse.</exception>
    /// <exception cref="MixedMoneyException">The flows differ in currency or basis.</exception>
    /// <exception cref="ArgumentException">A payment falls after the study, or savings or investment are not above 0 in present value.</exception>
    /// <remarks>Equation: (1 + r)·SIR^(1/τ) - 1, τ the years of the study. Source: money-13.</remarks>
    public static Rate Airr(DatedMoneyFlow savings, DatedMoneyFlow investment, Rate rate, LocalDate end, DayCount count = DayCount.Actual365)
    {
        var both = Both(savings, investment);
        if (both.LastDate > end || both.FirstDate >= end) throw Throw.OutsideStudy("payments", both, new DateSpan(both.FirstDate, LocalDate.Max(both.FirstDate, end)));
        var ratio = Sir(savings, investment, rate, count);
        if (!(ratio is > 0 and <= 1e12)) throw Throw.RatioNotPositive(ratio);
        return Rate.Solved((1 + rate.PerYear) * Math.Pow(ratio, 1 / YearFraction(both.FirstDate, end, count)) - 1, rate.IsReal);
    }

    /// <summary>Life-cycle cost of dated payments as a sum of named parts: investment, energy, upkeep, replacements.</summary>
    /// <param name="rate">Discount rate per year, of the parts' basis.</param>
    /// <param name="study">The study: costs are worth what they are on its first day, and the yearly cost is spread over it. A residual value may fall on its end.</param>
    /// <param name="count">How days become years.</param>
    /// <param name="parts">Name and payments of each part; paid is negative, a salvage value positive. All of one currency and basis, within the study.</param>
    /// <exception cref="BasisMismatchException">The rate is real and a flow nominal, or the reverse.</exception>
    /// <exception cref="MixedMoneyException">Parts of different currency or basis.</exception>
    /// <exception cref="ArgumentException">No part, a study of no days, or a payment before or after it.</exception>
    /// <remarks>Equation: LCC = Σ PV of parts. The parts are those of 10 CFR 436.19. Source: money-13.</remarks>
    public static LifeCycleCost LifeCycleCost(Rate rate, DateSpan study, DayCount count, params ReadOnlySpan<(string Name, DatedMoneyFlow Flow)> parts)
    {
        if (study.Start >= study.End) throw Throw.OneDayOnly(study.Start);
        if (parts.IsEmpty) throw Throw.EmptyFlow();
        var costs = new List<(string Name, Money PresentCost)>(parts.Length);
        Money? total = null;
        foreach (var (name, flow) in parts)
        {
            var perYear = RateOf(flow, rate);
            if (flow.FirstDate < study.Start || flow.LastDate > study.End) throw Throw.OutsideStudy(name, flow, study);
            var cost = flow.InMoney(-ValueOn(study.Start, flow, perYear, count));
            costs.Add((name, cost));
            total = total is { } sum ? sum + cost : cost;
        }
        var all = total!.Value;
        var level = all with { Amount = Throw.IfTooLarge((double)all.Amount / LevelWorth(rate.PerYear, YearFraction(study.Start, study.End, count))) };
        return new LifeCycleCost(costs, all, level, rate, YearsBegun(study.Start, study.End)) { Study = study, DaysCounted = count };
    }

    private static DatedMoneyFlow Both(DatedMoneyFlow savings, DatedMoneyFlow investment)
    {
        ArgumentNullException.ThrowIfNull(savings);
        ArgumentNullException.ThrowIfNull(investment);
        return savings + investment;
    }

    /// <summary>Value on a day that is no later than the first payment.</summary>
    private static double ValueOn(LocalDate day, DatedMoneyFlow flow, double perYear, DayCount count)
    {
        var sum = flow.Amounts.Sum(a => (double)a.Amount * Math.Pow(1 + perYear, -YearFraction(day, a.Date, count)));
        return double.IsFinite(sum) ? sum : throw Throw.NoFiniteValue(perYear);
    }

    private static int YearsBegun(LocalDate from, LocalDate to)
    {
        var whole = Period.Between(from, to, PeriodUnits.Years).Years;
        return from.PlusYears(whole) < to ? whole + 1 : whole;
    }
}
