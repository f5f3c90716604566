namespace SolarEconomics;

/// <summary>What the connection to the grid allows.</summary>
public sealed record GridConnection
{
    /// <summary>A connection without limits that matter.</summary>
    public static GridConnection Unlimited { get; } = new();

    /// <summary>No connection: off-grid.</summary>
    public static GridConnection None { get; } = new() { MostImportKw = 0, MostExportKw = 0, RunsInOutages = true };

    /// <summary>The most that can be taken: the main fuse or the contract. Unit: kW. Default: no limit.</summary>
    public double MostImportKw { get; init => field = Require.LimitKw(value); } = double.PositiveInfinity;

    /// <summary>The most that may be sent. Unit: kW. Default: no limit. A limit that changes stands in <see cref="Conditions.MostExportKw"/>.</summary>
    public double MostExportKw { get; init => field = Require.LimitKw(value); } = double.PositiveInfinity;

    /// <summary>Whether arrays and battery go on when the grid is out. Default: false, as an ordinary plant switches off with the grid.</summary>
    public bool RunsInOutages { get; init; }

    /// <summary>Whether there is no grid at all.</summary>
    public bool IsOffGrid => MostImportKw == 0 && MostExportKw == 0;
}
