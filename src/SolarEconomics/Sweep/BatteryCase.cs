namespace SolarEconomics;

/// <summary>One future of a sweep: a battery and how sun, use and prices go on over the years.</summary>
/// <param name="Battery">The battery, its figures counted at the board. Its standby counts as use of the plant.</param>
public sealed record BatteryCase(Battery Battery)
{
    /// <summary>The battery.</summary>
    public Battery Battery { get; init => field = value ?? throw new ArgumentNullException(nameof(Battery)); } = Battery ?? throw new ArgumentNullException(nameof(Battery));

    /// <summary>The most that the converter between board and battery gives and takes, beside the battery's own limits. Unit: kW at the board. Default: no limit of its own.</summary>
    public double ConverterKw { get; init => field = Require.LimitKw(value); } = double.PositiveInfinity;

    /// <summary>Generation against the conditions': 1.5 is an array half as large again. Range: 0 or more. Default: 1.</summary>
    public double SunScale { get; init => field = Require.AtLeastZero(value, "times the generation"); } = 1;

    /// <summary>Use against the conditions'. Range: 0 or more. Default: 1.</summary>
    public double UseScale { get; init => field = Require.AtLeastZero(value, "times the use"); } = 1;

    /// <summary>Share of generation lost each year, of what is left. Range: 0 to 0.2. Default: 0.</summary>
    public double SunLossPerYear { get; init => field = Require.Within(value, 0, 0.2, "a fraction a year; 0.5 % is written 0.005", nameof(SunLossPerYear)); }

    /// <summary>Growth of use a year. Range: −0.5 to 1. Default: 0.</summary>
    public double UseGrowth { get; init => field = Require.Within(value, -0.5, 1, "a fraction a year; 2 % is written 0.02", nameof(UseGrowth)); }

    /// <summary>How its capacity falls. A sweep never replaces it: its end-of-life rules are left out. Default: none.</summary>
    public BatteryAgeing Ageing { get; init; } = BatteryAgeing.None;

    /// <summary>Price of the battery, paid at the start. Unit: the currency of the prices. Default: 0.</summary>
    public double Price { get; init => field = Require.AtLeastZero(value, "currency"); }

    /// <summary>Growth of the price of import and of feed-in a year, nominal. Range: −0.5 to 1. Default: 0.</summary>
    public double PriceGrowth { get; init => field = Require.Within(value, -0.5, 1, "a fraction a year; 3 % is written 0.03", nameof(PriceGrowth)); }

    /// <summary>Discount rate a year, nominal. Range: −0.5 to 1. Default: 0.</summary>
    public double DiscountRate { get; init => field = Require.Within(value, -0.5, 1, "a fraction a year; 5 % is written 0.05", nameof(DiscountRate)); }
}
