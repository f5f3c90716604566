namespace SolarEconomics;

/// <summary>The same home's bills as they are, without its battery, and without any plant.</summary>
/// <param name="Actual">Bills of what flowed through the meter.</param>
/// <param name="WithoutBattery">Bills of the same use and generation without a store.</param>
/// <param name="WithoutSolar">Bills of the same use without any plant.</param>
public sealed partial record BillWithAndWithout(IReadOnlyList<Bill> Actual, IReadOnlyList<Bill> WithoutBattery, IReadOnlyList<Bill> WithoutSolar) : IFinding
{
    /// <summary>Bills with and without plant and battery, under one plan.</summary>
    /// <param name="plan">The tariff laid on the grid.</param>
    /// <param name="energy">What the meter counts, with <see cref="MeteredEnergy.UseKwh"/> and <see cref="MeteredEnergy.GenerationKwh"/>.</param>
    /// <exception cref="TariffException">Use and generation are not known.</exception>
    /// <exception cref="ArgumentException">A column has another length than the grid, or holds no finite number somewhere.</exception>
    /// <remarks>Without a battery, generation meets use within each interval and the rest is sent: the flows through the meter are then a lower bound.</remarks>
    public static BillWithAndWithout Of(BillingPlan plan, MeteredEnergy energy)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(energy);
        if (energy.UseKwh.Length == 0 || energy.GenerationKwh.Length == 0) throw Throw.NeedsUseAndGeneration(plan.History.Latest);
        var actual = plan.Bills(energy);
        var direct = energy with
        {
            ImportKwh = [.. energy.UseKwh.Zip(energy.GenerationKwh, (use, made) => Math.Max(0, use - made))],
            ExportKwh = [.. energy.UseKwh.Zip(energy.GenerationKwh, (use, made) => Math.Max(0, made - use))],
        };
        var none = new double[energy.UseKwh.Length];
        var without = energy with { ImportKwh = energy.UseKwh, ExportKwh = none, GenerationKwh = none, CurtailedKwh = [] };
        return new BillWithAndWithout(actual, plan.Bills(direct), plan.Bills(without));
    }

    /// <summary>What the plant with its battery saves on the bills.</summary>
    public Money SavedByAll => Sum(WithoutSolar) - Sum(Actual);

    /// <summary>What the battery saves beside the plant; below 0 where it costs more than it saves.</summary>
    public Money SavedByBattery => Sum(WithoutBattery) - Sum(Actual);

    private static Money Sum(IReadOnlyList<Bill> bills) => bills.Skip(1).Aggregate(bills[0].Total, (sum, bill) => sum + bill.Total);
}
