using System.Globalization;
using NodaTime;
using NodaTime.Text;

namespace SolarEconomics;

internal static partial class Throw
{
    internal static ArgumentOutOfRangeException RateAskedBack(double rate)
    {
        var percent = (rate * 100).ToString("0.##", CultureInfo.InvariantCulture);
        var number = rate.ToString(CultureInfo.InvariantCulture);
        return new ArgumentOutOfRangeException(nameof(rate), rate, rate >= 1 && double.IsFinite(rate)
            ? $"Found a rate of {number}, which is {percent} % a year. Did you mean {(rate / 100).ToString("0.######", CultureInfo.InvariantCulture)}? " +
              $"Rates are fractions: 5 % is written 0.05. If {percent} % is meant, say so with Rate.NominalPercent({percent})."
            : $"Found a rate of {number}, expected a fraction above -1: 5 % a year is written 0.05, and nothing loses more than all.");
    }

    internal static ArgumentOutOfRangeException PeriodRateAskedBack(double rate) =>
        new(nameof(rate), rate, string.Create(CultureInfo.InvariantCulture,
            $"Found a rate of {rate} per period, expected a fraction above -1 and below 1: 6 % a year paid monthly is written 0.06/12, not 6 or 0.5."));

    internal static ArgumentOutOfRangeException BadLife(int years, string name) =>
        new(name, years, string.Create(CultureInfo.InvariantCulture, $"Found a life of {years} years, expected a whole number from 1 to 1,000."));

    internal static ArgumentOutOfRangeException EndlessGrowth(double rate, double growth) =>
        new(nameof(growth), growth, string.Create(CultureInfo.InvariantCulture,
            $"Found growth of {growth * 100:0.##} % a year and a rate of {rate * 100:0.##} %, expected growth below the rate: the sum of all years has no end. Give a number of years."));

    internal static ArgumentException NoMirr(double paid, double received, double years) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"No modified rate of return: {paid:#,0.##} is paid and {received:#,0.##} received over {years:0.##} year{(years == 1 ? "" : "s")}, expected both above 0 and at least one year. Check the signs."));

    internal static ArgumentException OneDayOnly(LocalDate day) =>
        new($"Found {Day(day)} as the first day and the last, expected two days or more: a yearly rate or amount needs a length of time.");

    internal static ArgumentException OutsideStudy(string part, DatedMoneyFlow flow, DateSpan study) =>
        new($"Found {part} from {Day(flow.FirstDate)} to {Day(flow.LastDate)} in a study from {Day(study.Start)} to {Day(study.End)}, expected a study of a day or more and no payment before or after it. " +
            "Lengthen the study, or end the part with a residual value.");

    internal static ArgumentException NeverRepaid(double rate, double payment, double presentValue, double futureValue) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Payments of {payment:#,0.##} never take {presentValue:#,0.##} to {futureValue:#,0.##}: each period's interest is {rate * presentValue:#,0.##}. ") +
            "Expected a payment above the interest, with the opposite sign of what is received.");

    internal static ArgumentException PaysBackTooLittle(double advance, double paid) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found payments that sum to {paid:#,0.##} for an advance of {advance:#,0.##}, expected at least the advance and no payment below 0."));

    internal static ArgumentOutOfRangeException NoEnergy() =>
        new("energyKwh", 0.0, "Found no energy in any year, expected some kWh: a cost per kWh needs one.");

    internal static ArgumentException NotWholeFlows(int values, int perFlow) =>
        new(string.Create(CultureInfo.InvariantCulture, $"Found {Wording.CountInMessage(values, "value")} and {perFlow} a flow, expected a whole number of flows of 1 value or more."));

    internal static ArgumentException LoanLongerThanHorizon(int loanYears, int horizonYears) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found a loan of {Wording.CountInMessage(loanYears, "year")} in a horizon of {horizonYears}, expected the horizon to cover it: debt after its end would be left out. Lengthen the horizon."));

    internal static ArgumentException LongerThanStudy(string part, int lastYear, int years) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found {part} up to year {lastYear} in a study of {Wording.CountInMessage(years, "year")}, expected no amount after its end. Lengthen the study, or end the part with a residual value."));

    internal static BasisMismatchException AlreadyReal(Rate rate) =>
        new($"Found {rate}, expected a nominal rate: inflation was taken out already.");

    internal static BasisMismatchException AlreadyNominal(Rate rate) =>
        new($"Found {rate}, expected a real rate: inflation is in it already.");

    internal static BasisMismatchException FlowAlready(PriceBasis basis) =>
        new($"Found a flow that is {basis} already. Convert it once only.");

    internal static BasisMismatchException BasisMismatch(PriceBasis flow, Rate rate) =>
        new($"Found a flow that is {flow} and a rate of {rate}, expected both nominal or both real. " +
            "Convert the rate with ToReal or ToNominal and an inflation rate.");

    internal static ArgumentException EmptyFlow() =>
        new("Found a flow of no amounts, expected at least one.");

    internal static ArgumentOutOfRangeException NotFinite(double amount, int index) =>
        new("amounts", amount, string.Create(CultureInfo.InvariantCulture,
            $"Found {amount} at place {index} (counted from 0), expected finite numbers. Leave out or estimate what is missing before this step."));

    internal static ArgumentException OutOfOrder(DatedAmount before, DatedAmount after) =>
        new($"Found {Day(after.Date)}{Where(after)} after {Day(before.Date)}{Where(before)}, expected dates in order. " +
            "Sort the payments, or build the flow with DatedMoneyFlow.Sorted.");

    internal static MixedMoneyException MixedFlows(MoneyFlow a, MoneyFlow b) =>
        new($"Found a flow in {a.Currency} {a.Basis} together with one in {b.Currency} {b.Basis}, expected one currency and one price basis. " +
            "Convert one of them first.");

    internal static decimal IfTooLarge(double amount) =>
        Math.Abs(amount) < 7.9e27
            ? (decimal)amount
            : throw new OverflowException(string.Create(CultureInfo.InvariantCulture,
                $"Found an amount of {amount:0.###e+0}, expected less than 7.9e27: a rate near -100 % or a long growth makes numbers that are no money."));

    internal static ArgumentException UnequalLengths(int amounts, int dates) =>
        new(string.Create(CultureInfo.InvariantCulture, $"Found {Wording.CountInMessage(amounts, "amount")} and {Wording.CountInMessage(dates, "date")}, expected one date for each amount."));

    internal static ArgumentOutOfRangeException CostNotPositive(double cost) =>
        new(nameof(cost), cost, string.Create(CultureInfo.InvariantCulture,
            $"Found a cost of {(cost == 0 ? 0 : cost)}, expected an amount above 0: what is paid is written without a sign here."));

    internal static ArgumentOutOfRangeException RatioNotPositive(double sir) =>
        new(nameof(sir), sir, string.Create(CultureInfo.InvariantCulture,
            $"Found a savings-to-investment ratio of {sir}, expected one above 0 and at most 1e12: what brings no savings in present value has no adjusted rate of return."));

    internal static OverflowException SumTooLarge(Currency currency) =>
        new($"Found amounts in {currency} that add up to more than 7.9e28, expected amounts of money: check the size of the amounts and the length of the growth behind them.");

    internal static OverflowException NoFiniteValue(double rate) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found no finite value at {rate * 100:0.##} % a year: so near -100 % that the later years count without limit. Use a higher rate."));

    internal static NoSingleRateException NoSingleRate(ReadOnlySpan<double> flow, IrrResult result, string unit)
    {
        var changes = string.Create(CultureInfo.InvariantCulture, $"sign changes: {result.SignChanges}");
        if (result.End == SolveEnd.SeveralRoots)
        {
            var rates = string.Join(", ", result.Roots.Select(r => (r.PerYear * 100).ToString("0.##", CultureInfo.InvariantCulture) + " %"));
            return new(string.Create(CultureInfo.InvariantCulture,
                $"Found {result.Roots.Count} rates of return ({rates} a year; {changes}), expected one. ") +
                "None of them ranks this flow: compare net present values at a rate of your own, or use Mirr.", result);
        }
        if (result.End == SolveEnd.NotConverged)
        {
            return new(result.Iterations == 0
                ? string.Create(CultureInfo.InvariantCulture, $"Found {flow.Length} payments with {result.SignChanges} sign changes, expected fewer: ") +
                  "finding every rate of return would take too long. Add payments up by month or year first."
                : string.Create(CultureInfo.InvariantCulture,
                    $"The search for a rate of return did not settle after {Wording.CountInMessage(result.Iterations, "step")} ({changes}). Check the size of the amounts."), result);
        }
        double paid = 0, received = 0;
        foreach (var amount in flow)
        {
            if (amount < 0) paid -= amount; else received += amount;
        }
        var sums = string.Create(CultureInfo.InvariantCulture, $"{paid:#,0.##}{unit} is paid and {received:#,0.##}{unit} received ({changes})");
        return new(result.End == SolveEnd.NoSignChange
            ? $"No rate of return: {sums}, expected both a payment and a return. Check that year 0 holds the cost, as a negative amount."
            : $"No rate of return above -100 % a year: {sums}, and the net value is 0 at no rate. Compare net present values at a rate of your own.", result);
    }

    private static string Day(LocalDate date) => LocalDatePattern.Iso.Format(date);

    private static string Where(DatedAmount amount) => amount.Origin is null ? "" : " (" + amount.Origin + ")";
}
