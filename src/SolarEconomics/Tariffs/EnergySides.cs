namespace SolarEconomics;

/// <summary>What follows from the side that a part prices.</summary>
internal static class EnergySides
{
    /// <summary>1 where the home pays, −1 where it is paid.</summary>
    internal static int Sign(this EnergySide side) => side.IsCharge() ? 1 : -1;

    internal static bool IsCharge(this EnergySide side) => side is EnergySide.Import or EnergySide.ControlledLoad;

    internal static string Words(this EnergySide side) => side switch
    {
        EnergySide.Import => "taken from the grid",
        EnergySide.ControlledLoad => "taken from the grid by the controlled load",
        EnergySide.Export => "sent to the grid",
        _ => "held back",
    };
}
