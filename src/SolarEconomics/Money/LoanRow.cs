namespace SolarEconomics;

/// <summary>One payment of a loan, in the loan's currency.</summary>
/// <param name="Number">Number of the payment, from 1.</param>
/// <param name="Interest">Interest in it.</param>
/// <param name="Principal">Principal in it, a balloon included, extra payments not.</param>
/// <param name="Extra">Extra payment made with it.</param>
/// <param name="Fee">Fee with it.</param>
/// <param name="Balance">What is still owed after it.</param>
public sealed record LoanRow(int Number, decimal Interest, decimal Principal, decimal Extra, decimal Fee, decimal Balance)
{
    /// <summary>Everything paid on the day.</summary>
    public decimal Paid => Interest + Principal + Extra + Fee;
}
