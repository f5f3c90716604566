namespace SolarEconomics;

/// <summary>What all arrays together bring to the board and to the battery's DC bus. Unit: kWh per interval.</summary>
internal sealed class BusSupply
{
    private BusSupply(int count) => (AcKwh, DcKwh, ClippedKwh) = (new double[count], new double[count], new double[count]);

    internal double[] AcKwh { get; }

    internal double[] DcKwh { get; }

    /// <summary>What the devices' own limits leave out, counted behind the device.</summary>
    internal double[] ClippedKwh { get; }

    /// <summary>All that could have been made, behind the devices.</summary>
    internal double PotentialKwh(int i) => AcKwh[i] + DcKwh[i] + ClippedKwh[i];

    internal static BusSupply Of(Conditions conditions)
    {
        var hours = conditions.Time.HoursArray;
        var supply = new BusSupply(hours.Length);
        foreach (var device in FeedInDevice.Of(conditions.Arrays))
            device.AddBehind(hours, device.Coupling is Coupling.Ac ? supply.AcKwh : supply.DcKwh, supply.ClippedKwh);
        return supply;
    }
}
