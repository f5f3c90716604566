namespace SolarEconomics;

/// <summary>Blocks of a rate: the first kWh at one price, the next at another.</summary>
/// <param name="Steps">The blocks in order, each ending above the one before; only the last has no end.</param>
/// <param name="Per">The time for which their sizes are stated.</param>
public sealed record RateBlocks(IReadOnlyList<RateBlock> Steps, BlockPeriod Per = BlockPeriod.Bill)
{
    /// <summary>Whether the blocks run on from bill to bill until the month, quarter or year of <see cref="Per"/> turns, at their full size;
    /// otherwise each bill takes its share of them. Default: no.</summary>
    public bool RunsOn { get; init; }

    /// <summary>Whether blocks can run on: only what the calendar turns can.</summary>
    internal bool CanRunOn => !RunsOn || Per is BlockPeriod.Month or BlockPeriod.Quarter or BlockPeriod.Year;

    /// <summary>Whether every kWh falls into exactly one block.</summary>
    internal bool AreInOrder
    {
        get
        {
            if (Steps.Count == 0 || Steps[^1].UpToKwh is not null) return false;
            var before = 0m;
            foreach (var step in Steps.Take(Steps.Count - 1))
            {
                if (step.UpToKwh is not { } end || end <= before) return false;
                before = end;
            }
            return true;
        }
    }

    /// <summary>How much of a quantity falls into each block.</summary>
    /// <param name="kwh">The quantity, 0 or more.</param>
    /// <param name="scale">What the sizes are multiplied by.</param>
    /// <param name="inBlocks">Added to; as long as <see cref="Steps"/>.</param>
    internal void Share(decimal kwh, decimal scale, Span<decimal> inBlocks)
    {
        var from = 0m;
        for (var i = 0; i < Steps.Count; i++)
        {
            var until = Steps[i].UpToKwh is { } end ? Math.Min(kwh, Math.Round(end * scale, 9)) : kwh;
            if (until > from) inBlocks[i] += until - from;
            from = Math.Max(from, until);
        }
    }
}
