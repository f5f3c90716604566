namespace SolarEconomics.Tests;

/// <summary>Slow twins of the time-value formulas, written term by term with powers: no running factor, no closed form.</summary>
internal static class Naive
{
    internal static double Npv(double[] flow, double rate) => flow.Select((amount, year) => amount / Math.Pow(1 + rate, year)).Sum();

    internal static double SumOf(int years, Func<int, double> term) => Enumerable.Range(1, years).Sum(term);

    /// <summary>What is owed after each payment, month by month.</summary>
    internal static double Owed(double amount, double rate, double payment, int payments)
    {
        for (var i = 0; i < payments; i++) amount = amount + amount * rate - payment;
        return amount;
    }
}
