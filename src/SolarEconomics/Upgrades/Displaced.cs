namespace SolarEconomics;

/// <summary>What becomes of modules that an upgrade displaces.</summary>
/// <remarks>The purchase price of the old modules is sunk; what they sell for, or yield elsewhere, counts.</remarks>
public sealed record Displaced
{
    private Displaced(string? device, double conditionShare, decimal received)
    {
        Device = device;
        ConditionShare = conditionShare;
        Received = received;
    }

    /// <summary>The device whose modules they join; <see langword="null"/> where they are not reused.</summary>
    public string? Device { get; }

    /// <summary>Share of their rating that they still give there. Range: 0 to 1.</summary>
    public double ConditionShare { get; }

    /// <summary>Received for them; negative where moving or disposing costs money. Unit: the site's currency.</summary>
    public decimal Received { get; }

    /// <summary>Kept as spares: no money, no energy.</summary>
    public static Displaced Kept { get; } = new(null, 0, 0);

    /// <summary>The same, what is received moved by a factor: old parts fall in price while one waits. What is paid stays.</summary>
    internal Displaced WithReceived(double factor) => Received > 0 ? new Displaced(Device, ConditionShare, Received * (decimal)factor) : this;

    /// <summary>Sold, own hours and advertisements taken off.</summary>
    /// <param name="received">Received. Range: 0 and above. Unit: the site's currency.</param>
    public static Displaced Sold(decimal received) => new(null, 0, (decimal)Require.Within((double)received, 0, 1e9, "the site's currency"));

    /// <summary>Taken away at a cost.</summary>
    /// <param name="cost">Paid. Range: 0 and above. Unit: the site's currency.</param>
    public static Displaced DisposedOf(decimal cost) => new(null, 0, -(decimal)Require.Within((double)cost, 0, 1e9, "the site's currency"));

    /// <summary>Reused behind another device, where they yield what that device's modules yield per kWp.</summary>
    /// <param name="device">Name of that device in the plant.</param>
    /// <param name="conditionShare">Share of their rating that they still give. Range: 0 to 1; 0.9 is 90 %.</param>
    /// <param name="cost">Mounting, wiring and tests. Range: 0 and above. Unit: the site's currency.</param>
    public static Displaced ReusedAt(string device, double conditionShare, decimal cost)
    {
        ArgumentNullException.ThrowIfNull(device);
        return new Displaced(device, Require.Fraction(conditionShare), -(decimal)Require.Within((double)cost, 0, 1e9, "the site's currency"));
    }
}
