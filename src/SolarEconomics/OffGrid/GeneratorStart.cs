namespace SolarEconomics;

/// <summary>Off-grid with a generator: self-consumption, and the generator from a start level up to a stop level of the battery.</summary>
/// <remarks>It also starts when the battery cannot give the power that is wanted. Running, it serves the use and charges with what is left.
/// Quiet hours stand on the <see cref="Generator"/>; loads that switch off at low charge on <see cref="LoadPart.OffBelowShare"/>.</remarks>
public sealed record GeneratorStart : Control
{
    /// <inheritdoc/>
    public override string Name => "generator by charge level";

    /// <summary>It starts when the battery is less full. Range: 0 to 1. Default: 0.3.</summary>
    public double StartBelowShare { get; init => field = Require.Fraction(value, nameof(StartBelowShare)); } = 0.3;

    /// <summary>Once running, it stops when the battery is this full. Range: 0 to 1. Default: 0.8.</summary>
    public double StopAboveShare { get; init => field = Require.Fraction(value, nameof(StopAboveShare)); } = 0.8;

    /// <summary>Whether it also starts for an equalising charge that is due, and runs until that is complete. Default: false, equalising waits for the sun.</summary>
    public bool Equalises { get; init; }

    /// <inheritdoc/>
    public override Order Decide(Situation now)
    {
        ArgumentNullException.ThrowIfNull(now);
        if (StopAboveShare < StartBelowShare) throw Throw.StopBelowStart(StartBelowShare, StopAboveShare);
        var wanted = now.StoredShare < StartBelowShare || (now.GeneratorRan && now.StoredShare < StopAboveShare) || now.ShortfallKwh > now.MostDischargeKwh
            || (Equalises && now.EqualisingIsDue);
        if (!wanted || now.MostGeneratorKwh <= 0 || !now.GridIsOut) return now.StoreOrCover();
        var spareKwh = Math.Max(0, now.MostGeneratorKwh - now.ShortfallAtBoardKwh);
        if (now.ShortfallAtBoardKwh >= now.MostGeneratorKwh)
        {
            var lacking = (now.ShortfallAtBoardKwh - now.MostGeneratorKwh) / now.BatteryToBoardEfficiency;
            return Order.Discharge(Math.Min(lacking, now.MostDischargeKwh)) with { GeneratorKwh = now.MostGeneratorKwh };
        }
        // Beyond the surplus, charging first keeps what the DC arrays would send to the board, which the generator then makes up for there; only what is more goes through the charger.
        var divertibleKwh = Math.Max(0, now.DcGenerationKwh - now.SurplusKwh);
        var mostDivertedKwh = Math.Min(divertibleKwh, spareKwh / now.BatteryToBoardEfficiency);
        var mostDrawnKwh = Math.Min(spareKwh - (mostDivertedKwh * now.BatteryToBoardEfficiency), now.MostToBatteryAtBoardKwh);
        var charge = Math.Min(now.MostChargeKwh, now.SurplusKwh + mostDivertedKwh + (mostDrawnKwh * now.BoardToBatteryEfficiency));
        var beyondKwh = Math.Max(0, charge - now.SurplusKwh);
        var divertedKwh = Math.Min(beyondKwh, divertibleKwh);
        var generatorKwh = now.ShortfallAtBoardKwh + (divertedKwh * now.BatteryToBoardEfficiency) + ((beyondKwh - divertedKwh) / now.BoardToBatteryEfficiency);
        return Order.Charge(charge) with { GeneratorKwh = generatorKwh };
    }
}
