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
            ? $"Found a rate of {number}, which is {percent} % a year. Did you mean {(rate / 100).ToString(CultureInfo.InvariantCulture)}? " +
              $"Rates are fractions: 5 % is written 0.05. If {percent} % is meant, say so with Rate.NominalPercent({percent})."
            : $"Found a rate of {number}, expected a fraction above -1: 5 % a year is written 0.05, and nothing loses more than all.");
    }

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
        new(string.Create(CultureInfo.InvariantCulture, $"Found {amounts} amounts and {dates} dates, expected one date for each amount."));

    internal static ArgumentOutOfRangeException CostNotPositive(double cost) =>
        new(nameof(cost), cost, string.Create(CultureInfo.InvariantCulture,
            $"Found a cost of {cost}, expected an amount above 0: what is paid is written without a sign here."));

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
            return new(string.Create(CultureInfo.InvariantCulture,
                $"The search for a rate of return did not settle after {result.Iterations} steps ({changes}). Check the size of the amounts."), result);
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
