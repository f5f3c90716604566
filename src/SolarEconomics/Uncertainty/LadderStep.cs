namespace SolarEconomics;

/// <summary>One rung of the evidence ladder with the range of the value that its records allow.</summary>
/// <param name="Rung">The rung.</param>
/// <param name="Range">The range; no wider than that of any rung before.</param>
public sealed record LadderStep(EvidenceRung Rung, MoneyRange Range)
{
    /// <summary>Flows that the rung's records allow and that are worth the lowest amount; <see langword="null"/> where that amount is only a bound.</summary>
    public EndFlows? LowFlows { get; init; }

    /// <summary>Flows that the rung's records allow and that are worth the highest amount; <see langword="null"/> where that amount is only a bound, and where there is none.</summary>
    public EndFlows? HighFlows { get; init; }

    /// <summary>Whether flows reach every end that there is.</summary>
    public bool IsAttained => LowFlows is not null && (HighFlows is not null || Range.High is null);

    /// <summary>The rung in words.</summary>
    public string Words => Rung switch
    {
        EvidenceRung.Counters => "counters and prices",
        EvidenceRung.MonthlyTotals => "monthly totals",
        EvidenceRung.IntervalGeneration => "interval generation",
        _ => "interval import, export and generation",
    };
}
