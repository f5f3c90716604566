namespace SolarEconomics;

/// <summary>One flow that the records leave open: its limits in each interval, and the sum that it counts in. Unit: kWh.</summary>
internal sealed class OpenFlow
{
    internal OpenFlow(int count)
    {
        LowKwh = new double[count];
        HighKwh = new double[count];
        SumOf = new int[count];
        Array.Fill(SumOf, -1);
    }

    internal double[] LowKwh { get; }

    internal double[] HighKwh { get; }

    /// <summary>Number of the sum that each interval counts in; -1 for none.</summary>
    internal int[] SumOf { get; }
}
