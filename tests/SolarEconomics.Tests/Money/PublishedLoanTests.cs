namespace SolarEconomics.Tests;

/// <summary>Loans and interest factors against published figures: the rows are in tests/data/published/rows-money.csv.</summary>
public sealed class PublishedLoanTests
{
    [Theory, PublishedRows("apr")]
    public void Apr_in_per_cent(string id) => Published.Check(id, r => 100 * TimeValue.Apr(
        r.Number("advance"), r.Dates("advanced")[0], r.Dates("first")[0], Enum.Parse<UnitPeriod>(r.Text("unit")), r.Numbers("payments")));

    [Theory, PublishedRows("apr-one-payment")]
    public void Apr_of_one_payment_in_per_cent(string id) => Published.Check(id, r =>
        100 * TimeValue.AprOfOnePayment(r.Number("advance"), r.Dates("dates")[0], r.Number("payment"), r.Dates("dates")[1]));

    [Theory, PublishedRows("pmt")]
    public void Pmt(string id) => Published.Check(id, r => TimeValue.Pmt(r.Number("rate"), r.Number("periods"), r.Number("present")));

    [Theory, PublishedRows("nper")]
    public void Nper(string id) => Published.Check(id, r => TimeValue.Nper(
        r.Number("rate"), r.Number("payment"), r.Number("present"), r.Number("future"), Enum.Parse<PaymentTiming>(r.Text("timing"))));

    [Theory, PublishedRows("fv")]
    public void Fv(string id) =>
        Published.Check(id, r => TimeValue.Fv(r.Number("rate"), r.Number("periods"), r.Number("payment"), r.Number("present")));

    [Theory, PublishedRows("rate-per-period")]
    public void Rate_per_period(string id) => Published.Check(id, r =>
        TimeValue.RatePerPeriod(r.Whole("periods"), r.Number("payment"), r.Number("present"), r.Number("future")));

    [Theory, PublishedRows("interest-paid")]
    public void Interest_paid(string id) => Published.Check(id, r =>
        TimeValue.InterestPaid(r.Number("rate"), r.Whole("periods"), r.Number("present"), r.Whole("first"), r.Whole("last")));

    [Theory, PublishedRows("principal-paid")]
    public void Principal_paid(string id) => Published.Check(id, r =>
        TimeValue.PrincipalPaid(r.Number("rate"), r.Whole("periods"), r.Number("present"), r.Whole("first"), r.Whole("last")));

    [Theory, PublishedRows("amortisation")]
    public void Amortisation_table(string id) => Published.Check(id, r =>
    {
        var loan = new Loan(Money.Nominal((decimal)r.Number("amount"), Currency.Of("USD")), r.Number("rate"), r.Whole("payments"));
        var table = loan.Table();
        var row = table.Rows[r.Whole("month") - 1];
        return r.Text("what") switch
        {
            "principal" => row.Principal,
            "interest" => row.Interest,
            "balance" => row.Balance,
            "total-interest" => table.TotalInterest.Amount,
            var other => throw new FormatException(other),
        };
    });

    [Theory, PublishedRows("factor")]
    public void Factor(string id) => Published.Check(id, r =>
    {
        var (rate, years) = (r.Number("rate"), r.Whole("years"));
        return r.Text("factor") switch
        {
            "P/F" => TimeValue.SinglePresentWorth(rate, years),
            "F/P" => TimeValue.CompoundAmount(rate, years),
            "P/A" => TimeValue.UniformPresentWorth(rate, years),
            "A/P" => TimeValue.CapitalRecovery(rate, years),
            "P/G" => TimeValue.GradientPresentWorth(rate, years),
            "A/G" => TimeValue.GradientUniform(rate, years),
            var other => throw new FormatException(other),
        };
    });
}
