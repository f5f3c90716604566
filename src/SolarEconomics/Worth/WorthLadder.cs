namespace SolarEconomics;

/// <summary>The value's range at each rung of evidence, its ends billed where flows reach them.</summary>
internal sealed class WorthLadder(Site site, EvidenceLadder ladder, BillDifference bills)
{
    private readonly Currency _currency = site.Currency;

    /// <summary>The range of the highest rung, wide enough for flows that the records allow too: rounding can push them past an end by cents.</summary>
    internal LadderStep Highest(EnergySet? between)
    {
        var top = Alone(ladder.Highest);
        if (between is not null) top = Widened(top, Billed(ladder.Highest, between, 0));
        return top.IsAttained ? top : All(top)[^1];
    }

    /// <summary>All rungs up to the highest, no range wider than the one before.</summary>
    internal IReadOnlyList<LadderStep> All(LadderStep top)
    {
        var steps = new List<LadderStep>();
        for (var rung = EvidenceRung.Counters; rung < ladder.Highest; rung++) steps.Add(Alone(rung));
        steps.Add(top);
        // Flows that all records allow are among those that fewer allow. Only rounding and records that contradict each other move an end here.
        for (var k = steps.Count - 2; k >= 0; k--)
        {
            if (steps[k + 1].LowFlows is { } low) steps[k] = Widened(steps[k], low);
            if (steps[k + 1].HighFlows is { } high) steps[k] = Widened(steps[k], high);
        }
        // A bound need not reach beyond what fewer records allow.
        for (var k = 1; k < steps.Count; k++)
        {
            var within = steps[k].Range.Within(steps[k - 1].Range);
            steps[k] = steps[k] with { Range = within };
        }
        return steps;
    }

    private LadderStep Alone(EvidenceRung rung)
    {
        if (ladder.FlowsAt(rung) is not { AreEnds: true } flows)
        {
            var ends = ladder.EndsOf(rung);
            return new LadderStep(rung, new MoneyRange(Cents(ends.Low, up: false), ends.High is { } end ? Cents(end, up: true) : null));
        }
        var low = Billed(rung, flows.Low, flows.MissedKwh);
        if (flows.High is null) return new LadderStep(rung, new MoneyRange(low.Value, null)) { LowFlows = low };
        var high = Billed(rung, flows.High, flows.MissedKwh);
        if ((high.Value - low.Value).Amount < 0) (low, high) = (high, low);
        return new LadderStep(rung, new MoneyRange(low.Value, high.Value)) { LowFlows = low, HighFlows = high };
    }

    private static LadderStep Widened(LadderStep step, EndFlows flows)
    {
        if ((flows.Value - step.Range.Low).Amount < 0) step = step with { Range = step.Range with { Low = flows.Value }, LowFlows = flows };
        if (step.Range.High is { } high && (high - flows.Value).Amount < 0) step = step with { Range = step.Range with { High = flows.Value }, HighFlows = flows };
        return step;
    }

    private EndFlows Billed(EvidenceRung rung, EnergySet flows, double missedKwh) =>
        new(rung, flows, Money.Nominal(bills.PerPeriod(flows).Sum(), _currency), missedKwh, site.Zone);

    private Money Cents(double amount, bool up)
    {
        var cents = (decimal)amount * 100;
        return Money.Nominal((up ? Math.Ceiling(cents) : Math.Floor(cents)) / 100, _currency);
    }
}
