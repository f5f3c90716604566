using System.Globalization;

namespace SolarEconomics;

/// <summary>Whether an amount is in money of the day (nominal) or in the money of one named year (real).</summary>
/// <remarks>The <c>default</c> is <see cref="Nominal"/>.</remarks>
public readonly record struct PriceBasis
{
    private readonly int _year;

    private PriceBasis(int year) => _year = year;

    /// <summary>Money of the day on which it is paid.</summary>
    public static PriceBasis Nominal => default;

    /// <summary>Money of the middle of one calendar year.</summary>
    /// <param name="year">Calendar year, 1900 to 2200.</param>
    public static PriceBasis RealOf(int year) =>
        year is >= 1900 and <= 2200
            ? new PriceBasis(year)
            : throw new ArgumentOutOfRangeException(nameof(year), year, "Expected a calendar year from 1900 to 2200.");

    /// <summary>Whether this is money of the day.</summary>
    public bool IsNominal => _year == 0;

    /// <summary>The year whose money is meant; <see langword="null"/> for nominal.</summary>
    public int? Year => _year == 0 ? null : _year;

    /// <summary>Prints <c>nominal</c> or <c>real 2026</c>.</summary>
    public override string ToString() => IsNominal ? "nominal" : "real " + _year.ToString(CultureInfo.InvariantCulture);
}
