namespace SolarEconomics;

/// <summary>What an outlook assumes beyond the records. Rates are nominal, effective per year, as fractions: 5 % is 0.05.</summary>
public sealed record Assumptions
{
    /// <summary>Horizon in years from the first purchase. Range: 1 to 60. Default: 25, a usual warranty of modules; common practice, no source.</summary>
    public int Years { get; init; } = 25;

    /// <summary>Growth of import prices. Range: −0.5 to 1. Default: 0.02, the inflation aim of many central banks; common practice, no source.</summary>
    public double PriceGrowth { get; init; } = 0.02;

    /// <summary>Future import prices relative to the latest tariff's, at once and for good. Range: 0 to 10; 10 % more is 1.1. Default: 1.</summary>
    public double ImportPriceLevel { get; init; } = 1;

    /// <summary>Future feed-in prices relative to the latest tariff's, while a guaranteed rate lasts. Range: 0 to 10. Default: 1.</summary>
    public double FeedInPriceLevel { get; init; } = 1;

    /// <summary>Growth of the feed-in price. Range: −0.5 to 1. Default: 0, as many rates are fixed in money.</summary>
    public double FeedInGrowth { get; init; }

    /// <summary>Growth of running and replacement costs. Range: −0.5 to 1. Default: 0.02, as <see cref="PriceGrowth"/>.</summary>
    public double CostGrowth { get; init; } = 0.02;

    /// <summary>Discount rate: what the money would earn elsewhere after tax. Range: −0.5 to 1. Default: 0.04.</summary>
    public double DiscountRate { get; init; } = 0.04;

    /// <summary>How the modules age. Default: the published median of 0.5 % a year, compound.</summary>
    public Ageing Ageing { get; init; } = Ageing.PublishedMedian;

    /// <summary>Future generation relative to what the records say: 0.95 where they hold sunny years. Range: 0 to 2. Default: 1.</summary>
    public double YieldFactor { get; init; } = 1;

    /// <summary>Running costs per year at today's prices. Unit: the site's currency. Default: <see langword="null"/>, the yearly mean of the ledger so far.</summary>
    public decimal? RunningCostsPerYear { get; init; }

    /// <summary>Parts that will have to be replaced within the horizon. Default: none.</summary>
    public IReadOnlyList<Replacement> Replacements { get; init; } = [];

    /// <summary>Parts that fail by odds: an outlook counts what is to be expected, draws let each fail at an age of its own. Default: none.</summary>
    public IReadOnlyList<WearingPart> WearingParts { get; init; } = [];

    /// <summary>Price changes that are known ahead, beside the growth. Default: none.</summary>
    public IReadOnlyList<PriceStep> PriceSteps { get; init; } = [];

    /// <summary>The end of a guaranteed feed-in rate; <see langword="null"/> where none ends. Default: none.</summary>
    public FeedInGuarantee? FeedInGuarantee { get; init; }

    /// <summary>Share of what is paid for export that goes in tax. Range: 0 to 1. Default: 0, not stated; whether it is income at all differs by place.</summary>
    public double FeedInTaxRate { get; init; }

    /// <summary>Supply charges that the plant avoids a year at today's prices: only where the connection itself is given up. Range: 0 and above. Unit: the site's currency. Default: 0.</summary>
    public decimal AvoidedSupplyChargePerYear { get; init; }

    /// <summary>What the supply charge of the latest tariff rises by a year, at today's prices. It is paid with the plant and without, so it counts only for an option that leaves
    /// this tariff. Range: −1e6 to 1e6. Unit: the site's currency. Default: 0.</summary>
    public decimal SupplyChargeRisePerYear { get; init; }

    /// <summary>What the plant sells for at the horizon, removal paid; negative where removal costs more. Unit: the site's currency. Default: 0.</summary>
    public decimal ResidualValue { get; init; }

    /// <summary>How the recorded battery fades; <see langword="null"/> where it stays as the records show it. Default: none.</summary>
    public BatteryFade? BatteryFade { get; init; }

    /// <summary>Loans that paid for the plant, for the owner's view only (<see cref="Outlook.Owner"/>). Each ends by the horizon. Default: none.</summary>
    public IReadOnlyList<LoanTaken> Loans { get; init; } = [];

    /// <summary>Guards every range. Page and command line show the message.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range; a rate above 1 is asked back as per cent.</exception>
    internal Assumptions Checked()
    {
        Require.Within(Years, 1, 60, "years from the first purchase");
        Rate(PriceGrowth, nameof(PriceGrowth));
        Rate(FeedInGrowth, nameof(FeedInGrowth));
        Rate(CostGrowth, nameof(CostGrowth));
        Rate(DiscountRate, nameof(DiscountRate));
        Require.Within(YieldFactor, 0, 2, "future generation relative to the records; as recorded is 1");
        Require.Within(ImportPriceLevel, 0, 10, "import prices relative to the latest tariff; 10 % more is 1.1");
        Require.Within(FeedInPriceLevel, 0, 10, "feed-in prices relative to the latest tariff; 10 % more is 1.1");
        Require.Within((double)SupplyChargeRisePerYear, -1e6, 1e6, "money a year");
        Require.Fraction(FeedInTaxRate);
        Require.Within((double)AvoidedSupplyChargePerYear, 0, 1e9, "money a year, without a sign");
        foreach (var step in PriceSteps)
        {
            Require.Within(step.ImportFactor, 0, 10, "import price after a step relative to before; 8 % more is 1.08");
            Require.Within(step.FeedInFactor, 0, 10, "feed-in price after a step relative to before; 8 % more is 1.08");
        }
        foreach (var replacement in Replacements)
        {
            Require.Within(replacement.YearsAfterFirstPurchase, 0, 60, $"years after the first purchase, for {replacement.Part}");
            Require.Within((double)replacement.Cost, 0, 1e12, $"money for {replacement.Part}, without a sign");
        }
        if (RunningCostsPerYear is { } running) Require.Within((double)running, -1e12, 1e12, "money a year");
        Require.Within((double)ResidualValue, -1e12, 1e12, "money at the horizon; negative where removal costs more");
        foreach (var part in WearingParts) Require.Within((double)part.Cost, 0, 1e9, $"money for {part.Part}");
        if (BatteryFade is { } fade)
        {
            if (fade.UsableKwh is not (> 0 and <= 1e6)) throw Throw.CapacityAskedBack(nameof(fade.UsableKwh), fade.UsableKwh, 1e6);
            if (WearingParts.Any(p => p.Part == fade.Part)) throw Throw.FadingPartByOdds(fade.Part);
        }
        if (FeedInGuarantee is { } guarantee) Require.Within((double)guarantee.PricePerKwhAfter, 0, 100, "money per kWh after the guarantee");
        return this;
    }

    private static void Rate(double value, string name)
    {
        if (value is not (>= -0.5 and <= 1)) throw Throw.RateAsPercent(name, value);
    }
}
