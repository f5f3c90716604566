namespace SolarEconomics;

/// <summary>An array whose modules are replaced at the start of a year.</summary>
/// <param name="Year">Number of the year. Range: 1 to 100; one after the last year changes nothing.</param>
/// <param name="Array">Name of the array.</param>
/// <param name="PowerFactor">Power of the new modules against the old ones when new. Range: 0 or more; 0 removes the array.</param>
public sealed record ArrayRenewal(int Year, string Array, double PowerFactor = 1)
{
    /// <summary>Number of the year, from 1.</summary>
    public int Year { get; init => field = Checked(value); } = Checked(Year);

    /// <summary>Power of the new modules against the old ones when new.</summary>
    public double PowerFactor { get; init => field = Require.AtLeastZero(value, "times the power"); } = Require.AtLeastZero(PowerFactor, "times the power", nameof(PowerFactor));

    private static int Checked(int year) => (int)Require.Within(year, 1, 100, "number of the year; 1 is the first", nameof(Year));
}
