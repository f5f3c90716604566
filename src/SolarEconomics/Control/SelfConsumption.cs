namespace SolarEconomics;

/// <summary>Self-consumption first: what use leaves of the generation goes into the battery, what use lacks comes out of it.</summary>
public sealed record SelfConsumption : Control
{
    /// <inheritdoc/>
    public override string Name => "self-consumption first";

    /// <inheritdoc/>
    public override Order Decide(Situation now)
    {
        ArgumentNullException.ThrowIfNull(now);
        return now.StoreOrCover();
    }
}
