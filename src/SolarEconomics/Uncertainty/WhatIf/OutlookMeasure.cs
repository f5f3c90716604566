namespace SolarEconomics;

/// <summary>The amount of money that a what-if looks at.</summary>
/// <param name="Name">The amount in words.</param>
/// <param name="Of">Works it out from an outlook. Must be pure: it may run on several threads.</param>
public sealed record OutlookMeasure(string Name, Func<Outlook, double> Of)
{
    /// <summary>Net present value at the first purchase.</summary>
    public static OutlookMeasure Npv { get; } = new("net present value", o => o.ExactNpv);

    /// <summary>Net present value of an option beside doing nothing: every what-if of an outlook then asks it of the option.</summary>
    /// <param name="option">The option; its own price is <see cref="OptionResult.BreakEvenPrice"/>.</param>
    /// <remarks>Valued at the end of the records, without loans, as <see cref="Outlook.Compare"/> does. All draws, ranges and searches move the assumptions, the option stays as it is.</remarks>
    public static OutlookMeasure WorthOf(UpgradeOption option)
    {
        ArgumentNullException.ThrowIfNull(option);
        return new($"worth of {option.Name} beside doing nothing", o => new OptionMoney(o.Record, o.Assumptions, option).Npv);
    }

    /// <summary>Cash position at the horizon, undiscounted.</summary>
    public static OutlookMeasure PositionAtHorizon { get; } = new("cash position at the horizon", o => o.ExactPosition);
}
