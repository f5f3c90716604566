namespace SolarEconomics;

/// <summary>One rung of the evidence ladder with the range of the value that its records allow.</summary>
/// <param name="Rung">The rung.</param>
/// <param name="Range">The range; no wider than that of any rung before.</param>
public sealed record LadderStep(EvidenceRung Rung, MoneyRange Range)
{
    /// <summary>The rung in words.</summary>
    public string Words => Rung switch
    {
        EvidenceRung.Counters => "counters and prices",
        EvidenceRung.MonthlyTotals => "monthly totals",
        EvidenceRung.IntervalGeneration => "interval generation",
        _ => "interval import, export and generation",
    };
}
