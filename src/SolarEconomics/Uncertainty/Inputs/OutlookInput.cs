using System.Globalization;

namespace SolarEconomics;

/// <summary>One number that an outlook assumes, by name: to be drawn, moved over a range, or solved for.</summary>
/// <remarks>The usual ones are here ready; <see cref="Of"/> makes any other. Immutable, safe between threads.</remarks>
public sealed class OutlookInput
{
    private readonly Func<Outlook, double> _read;
    private readonly Func<Assumptions, double, Assumptions> _write;

    private OutlookInput(string name, InputUnit unit, double lowest, double highest, Func<Outlook, double> read, Func<Assumptions, double, Assumptions> write) =>
        (Name, Unit, Lowest, Highest, _read, _write) = (name, unit, lowest, highest, read, write);

    /// <summary>Plain words for people, and the name that its draws belong to.</summary>
    public string Name { get; }

    /// <summary>What kind of number it is.</summary>
    public InputUnit Unit { get; }

    /// <summary>Lowest value that an outlook takes.</summary>
    public double Lowest { get; }

    /// <summary>Highest value that an outlook takes.</summary>
    public double Highest { get; }

    /// <summary>Whether it takes whole numbers only.</summary>
    public bool IsWhole { get; private init; }

    /// <summary>Growth of import prices.</summary>
    public static OutlookInput PriceGrowth { get; } =
        Rate("import price growth", -0.5, a => a.PriceGrowth, (a, v) => a with { PriceGrowth = v });

    /// <summary>Growth of the feed-in price.</summary>
    public static OutlookInput FeedInGrowth { get; } =
        Rate("feed-in price growth", -0.5, a => a.FeedInGrowth, (a, v) => a with { FeedInGrowth = v });

    /// <summary>Growth of running and replacement costs.</summary>
    public static OutlookInput CostGrowth { get; } =
        Rate("cost growth", -0.5, a => a.CostGrowth, (a, v) => a with { CostGrowth = v });

    /// <summary>Discount rate.</summary>
    public static OutlookInput DiscountRate { get; } =
        Rate("discount rate", -0.5, a => a.DiscountRate, (a, v) => a with { DiscountRate = v });

    /// <summary>Import prices relative to the latest tariff's.</summary>
    public static OutlookInput ImportPriceLevel { get; } = new("level of import prices", InputUnit.Share, 0, 10,
        o => o.Assumptions.ImportPriceLevel, (a, v) => a with { ImportPriceLevel = v });

    /// <summary>Feed-in prices relative to the latest tariff's.</summary>
    public static OutlookInput FeedInPriceLevel { get; } = new("level of feed-in prices", InputUnit.Share, 0, 10,
        o => o.Assumptions.FeedInPriceLevel, (a, v) => a with { FeedInPriceLevel = v });

    /// <summary>Share of feed-in that goes in tax.</summary>
    public static OutlookInput FeedInTaxRate { get; } = new("tax on feed-in", InputUnit.Share, 0, 1,
        o => o.Assumptions.FeedInTaxRate, (a, v) => a with { FeedInTaxRate = v });

    /// <summary>Supply charges avoided a year: only where the connection is given up.</summary>
    public static OutlookInput AvoidedSupplyCharge { get; } = new("supply charge avoided a year", InputUnit.Money, 0, 1e6,
        o => (double)o.Assumptions.AvoidedSupplyChargePerYear, (a, v) => a with { AvoidedSupplyChargePerYear = (decimal)v });

    /// <summary>Rise of the latest tariff's supply charge a year: it counts for options that leave this tariff.</summary>
    public static OutlookInput SupplyChargeRise { get; } = new("rise of the supply charge a year", InputUnit.Money, -1e6, 1e6,
        o => (double)o.Assumptions.SupplyChargeRisePerYear, (a, v) => a with { SupplyChargeRisePerYear = (decimal)v });

    /// <summary>The horizon in whole years from the first purchase: a choice to search along, not one of the things that are drawn.</summary>
    public static OutlookInput Horizon { get; } = new("horizon", InputUnit.Years, 1, 60,
        o => o.Assumptions.Years, (a, v) => a with { Years = (int)Math.Round(v) }) { IsWhole = true };

    /// <summary>Loss of the modules per year, by the rule that the outlook's ageing has.</summary>
    public static OutlookInput AgeingPerYear { get; } = new("panel ageing", InputUnit.SharePerYear, 0, 0.2,
        o => o.Assumptions.Ageing.LossPerYear, (a, v) => a with { Ageing = a.Ageing.WithLossPerYear(v) });

    /// <summary>Future generation relative to the records: how typical their weather was.</summary>
    public static OutlookInput YieldFactor { get; } = new("future generation", InputUnit.Share, 0, 2,
        o => o.Assumptions.YieldFactor, (a, v) => a with { YieldFactor = v });

    /// <summary>Running costs a year at today's prices.</summary>
    public static OutlookInput RunningCostsPerYear { get; } = new("running cost a year", InputUnit.Money, 0, 1e9,
        o => o.RunningPerYear, (a, v) => a with { RunningCostsPerYear = (decimal)v });

    /// <summary>What the plant sells for at the horizon, removal paid.</summary>
    public static OutlookInput ResidualValue { get; } = new("residual value", InputUnit.Money, -1e9, 1e9,
        o => (double)o.Assumptions.ResidualValue, (a, v) => a with { ResidualValue = (decimal)v });

    /// <summary>Cost of replacing a part.</summary>
    /// <param name="part">The part, as the assumptions name it.</param>
    public static OutlookInput ReplacementCost(string part) => new($"cost of {part}", InputUnit.Money, 0, 1e9,
        o => (double)PartOf(o.Assumptions, part).Cost, (a, v) => WithPart(a, part, r => r with { Cost = (decimal)v }));

    /// <summary>Year in which a part is replaced, from the first purchase.</summary>
    /// <param name="part">The part, as the assumptions name it.</param>
    public static OutlookInput ReplacementYear(string part) => new($"year of {part}", InputUnit.Years, 0, 60,
        o => PartOf(o.Assumptions, part).YearsAfterFirstPurchase, (a, v) => WithPart(a, part, r => r with { YearsAfterFirstPurchase = v }));

    /// <summary>Any other number of the assumptions.</summary>
    /// <param name="name">Plain words; draws belong to this name.</param>
    /// <param name="unit">What kind of number it is.</param>
    /// <param name="lowest">Lowest value that makes sense.</param>
    /// <param name="highest">Highest value that makes sense, above <paramref name="lowest"/>.</param>
    /// <param name="read">Reads it from assumptions.</param>
    /// <param name="write">Assumptions with another value of it. Must be pure: it runs on several threads.</param>
    /// <exception cref="ArgumentException">The two ends are not in order.</exception>
    public static OutlookInput Of(string name, InputUnit unit, double lowest, double highest, Func<Assumptions, double> read, Func<Assumptions, double, Assumptions> write)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(read);
        ArgumentNullException.ThrowIfNull(write);
        if (!(lowest < highest)) throw Throw.EndsNotInOrder(lowest, highest);
        return new OutlookInput(name, unit, lowest, highest, o => read(o.Assumptions), write);
    }

    /// <summary>This input, known by a distribution only.</summary>
    /// <param name="distribution">Its odds. Draws beyond <see cref="Lowest"/> and <see cref="Highest"/> are held there, counted and said.</param>
    /// <exception cref="ArgumentException">It is the horizon, which is chosen and not drawn.</exception>
    public UncertainInput Is(IDistribution distribution) => IsWhole ? throw Throw.ChosenNotDrawn(this) : new(this, distribution);

    /// <summary>This input, moved between two ends.</summary>
    /// <param name="low">Low end.</param>
    /// <param name="high">High end, above <paramref name="low"/>.</param>
    public DeclaredRange Between(double low, double high) => new(this, low, high);

    /// <summary>Prints the name.</summary>
    public override string ToString() => Name;

    internal double ReadFrom(Outlook outlook) => _read(outlook);

    internal Assumptions Put(Assumptions assumptions, double value) => _write(assumptions, value);

    /// <summary>A value of it as people write it: <c>3.0 % a year</c>, <c>€2,600</c>.</summary>
    /// <param name="value">The value.</param>
    /// <param name="currency">Currency, where it is money.</param>
    /// <param name="culture">How numbers are written.</param>
    public string InWords(double value, Currency currency, CultureInfo culture) => Unit switch
    {
        InputUnit.SharePerYear => Wording.Percent(value, culture) + " a year",
        InputUnit.Share => Wording.Percent(value, culture),
        // A price of some cents is not 0.
        InputUnit.Money when Math.Abs(value) < 10 && value != Math.Truncate(value) => Wording.Price(Money.Nominal((decimal)value, currency), culture),
        InputUnit.Money => Wording.Whole(Money.Nominal((decimal)value, currency), culture),
        InputUnit.Years when IsWhole => Wording.Count((int)Math.Round(value), "year", culture),
        InputUnit.Years => Wording.Years(value, culture),
        _ => value.ToString("0.###", culture),
    };

    private static OutlookInput Rate(string name, double lowest, Func<Assumptions, double> read, Func<Assumptions, double, Assumptions> write) =>
        new(name, InputUnit.SharePerYear, lowest, 1, o => read(o.Assumptions), write);

    private static Replacement PartOf(Assumptions a, string part) =>
        a.Replacements.FirstOrDefault(r => r.Part == part) ?? throw Throw.UnknownPart(part, a.Replacements.Select(r => r.Part));

    private static Assumptions WithPart(Assumptions a, string part, Func<Replacement, Replacement> change)
    {
        _ = PartOf(a, part);
        return a with { Replacements = [.. a.Replacements.Select(r => r.Part == part ? change(r) : r)] };
    }
}
