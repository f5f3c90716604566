namespace SolarEconomics;

/// <summary>How a plant goes on year after year: what ages, what grows, what is replaced, what else changes.</summary>
/// <param name="Years">Years. Range: 1 to 60.</param>
public sealed record YearsAhead(int Years)
{
    /// <summary>Years.</summary>
    public int Years { get; init => field = Checked(value); } = Checked(Years);

    /// <summary>How the arrays' power falls, each on its own clock. Default: none.</summary>
    public Ageing Arrays { get; init; } = Ageing.None;

    /// <summary>Age of each array at the start, by name. Unit: years. Default: empty, all new.</summary>
    public IReadOnlyDictionary<string, double> ArrayAges { get; init; } = new Dictionary<string, double>(StringComparer.Ordinal);

    /// <summary>How the battery's capacity falls, and when it is at its end. Default: none.</summary>
    public BatteryAgeing Battery { get; init; } = BatteryAgeing.None;

    /// <summary>Age of the battery at the start. Unit: years. Default: 0.</summary>
    public double BatteryAge { get; init => field = Require.AtLeastZero(value, "years"); }

    /// <summary>Full cycles that the battery has behind it at the start. Default: 0.</summary>
    public double BatteryCycles { get; init => field = Require.AtLeastZero(value, "full cycles"); }

    /// <summary>Whether a battery at its end is replaced by a new one at the end of that year. Default: true.</summary>
    public bool ReplacesBattery { get; init; } = true;

    /// <summary>Price of a new battery today. Unit: the currency of the prices. Default: 0.</summary>
    public double BatteryPrice { get; init => field = Require.AtLeastZero(value, "currency"); }

    /// <summary>Change of the price of a battery a year, nominal; negative while prices fall. Range: −0.5 to 0.5. Default: 0.</summary>
    public double BatteryPriceGrowth { get; init => field = Require.Within(value, -0.5, 0.5, "a fraction a year; −4 % is written −0.04", nameof(BatteryPriceGrowth)); }

    /// <summary>Growth of use a year. Range: −0.5 to 1. Default: 0.</summary>
    public double UseGrowth { get; init => field = Require.Within(value, -0.5, 1, "a fraction a year; 2 % is written 0.02", nameof(UseGrowth)); }

    /// <summary>Growth of the price of import and feed-in a year, nominal. Range: −0.5 to 1. Default: 0.</summary>
    public double PriceGrowth { get; init => field = Require.Within(value, -0.5, 1, "a fraction a year; 3 % is written 0.03", nameof(PriceGrowth)); }

    /// <summary>Tariff versions that price the years, instead of the conditions' prices. Default: none. The first year is the one of the conditions; each further one is priced by
    /// the versions in force then, laid on the first year's days, so that days of the week stay where they are. <see cref="PriceGrowth"/> begins after the first year that the last
    /// version prices from its first day. Prices of called days and price series stay on their own days.</summary>
    public TariffHistory? Tariffs { get; init; }

    /// <summary>Arrays renewed at the start of a year: their clock starts again. Default: none.</summary>
    public IReadOnlyList<ArrayRenewal> Renewals { get; init; } = [];

    /// <summary>What else a year brings: another tariff, an outage, a car. Takes the number of the year, from 1, and its conditions; default: nothing.</summary>
    public Func<int, Conditions, Conditions>? Change { get; init; }

    private static int Checked(int years) => (int)Require.Within(years, 1, 60, "years", nameof(Years));
}
