using CsCheck;
using NodaTime;
using QLNet;

namespace SolarEconomics.Tests;

/// <summary>QLNet, an open library for financial mathematics, as a second opinion on random dated and yearly flows.</summary>
public sealed class SecondOpinionTests
{
    private static readonly LocalDate Start = new(2020, 3, 1);

    [Fact]
    public void Xirr_agrees_with_qlnet_on_random_dated_flows() =>
        Gen.Select(Gen.Double[500, 2e4], Gen.Select(Gen.Int[1, 9000], Gen.Double[1, 3e3]).Array[1, 30]).Sample((cost, later) =>
        {
            var payments = later.DistinctBy(p => p.Item1).OrderBy(p => p.Item1).ToArray();
            LocalDate[] dates = [Start, .. payments.Select(p => Start.PlusDays(p.Item1))];
            double[] amounts = [-cost, .. payments.Select(p => p.Item2)];
            // A fifth of the cost back after a week is a rate that no double holds: said by ours, and beyond the other's reach too.
            if (!TimeValue.TryXirr(amounts, dates, out var found)) return;
            var ours = found.Roots[0].PerYear;
            // QLNet searches from a guess and is not made for rates far from those of bonds.
            if (ours is < -0.5 or > 1) return;
            Assert.True(Math.Abs(Yield(cost, amounts[1..], dates[1..], new Actual365Fixed()) - ours) < 1e-8);
        }, iter: 300, threads: 1);

    [Fact]
    public void Xnpv_agrees_with_qlnet_on_random_dated_flows() =>
        Gen.Select(Gen.Select(Gen.Int[1, 9000], Gen.Double[-3e3, 3e3]).Array[1, 30], Gen.Double[-0.2, 0.5]).Sample((later, rate) =>
        {
            var payments = later.OrderBy(p => p.Item1).ToArray();
            LocalDate[] dates = [Start, .. payments.Select(p => Start.PlusDays(p.Item1))];
            double[] amounts = [0, .. payments.Select(p => p.Item2)];
            var theirs = CashFlows.npv(Leg(amounts, dates), rate, new Actual365Fixed(), Compounding.Compounded, Frequency.Annual, true, Day(Start), Day(Start));
            var ours = TimeValue.Xnpv(amounts, dates, rate);
            Assert.True(Math.Abs(theirs - ours) <= 1e-9 * amounts.Sum(a => Math.Abs(a) * Math.Pow(0.8, -25)), $"{ours} against {theirs}");
        }, iter: 300, threads: 1);

    [Theory]
    [InlineData(DayCount.Actual365)]
    [InlineData(DayCount.Actual360)]
    [InlineData(DayCount.ActualActual)]
    [InlineData(DayCount.Thirty360European)]
    public void Day_counts_agree_with_qlnet(DayCount count)
    {
        DayCounter theirs = count switch
        {
            DayCount.Actual365 => new Actual365Fixed(),
            DayCount.Actual360 => new Actual360(),
            DayCount.ActualActual => new ActualActual(QLNet.ActualActual.Convention.ISDA),
            _ => new Thirty360(QLNet.Thirty360.Thirty360Convention.EurobondBasis),
        };
        Gen.Select(Gen.Int[0, 5000], Gen.Int[0, 5000]).Sample((after, length) =>
        {
            var (from, to) = (Start.PlusDays(after), Start.PlusDays(after + length));
            Assert.Equal(theirs.yearFraction(Day(from), Day(to)), TimeValue.YearFraction(from, to, count), 5e-13);
        }, threads: 1);
    }

    private static double Yield(double price, double[] amounts, LocalDate[] dates, DayCounter count) =>
        CashFlows.yield(Leg(amounts, dates), price, count, Compounding.Compounded, Frequency.Annual, false, Day(Start), Day(Start), 1e-13, 1000, 0.05);

    private static List<CashFlow> Leg(double[] amounts, LocalDate[] dates) =>
        [.. amounts.Zip(dates, (amount, date) => (CashFlow)new SimpleCashFlow(amount, Day(date)))];

    private static Date Day(LocalDate date) => new(date.ToDateTimeUnspecified());
}
