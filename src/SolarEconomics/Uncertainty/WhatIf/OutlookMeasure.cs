namespace SolarEconomics;

/// <summary>The amount of money that a what-if looks at.</summary>
/// <param name="Name">The amount in words.</param>
/// <param name="Of">Works it out from an outlook. Must be pure: it may run on several threads.</param>
public sealed record OutlookMeasure(string Name, Func<Outlook, double> Of)
{
    /// <summary>Net present value at the first purchase.</summary>
    public static OutlookMeasure Npv { get; } = new("net present value", o => o.ExactNpv);

    /// <summary>Cash position at the horizon, undiscounted.</summary>
    public static OutlookMeasure PositionAtHorizon { get; } = new("cash position at the horizon", o => o.ExactPosition);
}
