namespace SolarEconomics;

/// <summary>Flows of one block of intervals that meet every condition but the sums. Unit: kWh.</summary>
internal sealed class Pattern
{
    internal Pattern(int from, int to, int places)
    {
        var count = to - from;
        From = from;
        Export = new double[count];
        Import = new double[count];
        Charge = new double[count];
        Discharge = new double[count];
        Generation = new double[places][];
        for (var k = 0; k < places; k++) Generation[k] = new double[count];
    }

    /// <summary>First interval of the block.</summary>
    internal int From { get; }

    internal int Count => Export.Length;

    internal double[] Export { get; }

    internal double[] Import { get; }

    internal double[] Charge { get; }

    internal double[] Discharge { get; }

    /// <summary>Generation of each place at the board.</summary>
    internal double[][] Generation { get; }

    /// <summary>What the flows are worth, in the direction that is sought. Unit: currency.</summary>
    internal double Worth { get; set; }

    /// <summary>What the block puts into each sum. Unit: kWh.</summary>
    internal double[] InSums { get; set; } = [];

    /// <summary>The same flows, to be changed by themselves.</summary>
    internal Pattern Copy()
    {
        var copy = new Pattern(From, From + Count, Generation.Length) { Worth = Worth, InSums = [.. InSums] };
        copy.Add(1, this);
        return copy;
    }

    /// <summary>Adds a share of another pattern of the same block.</summary>
    internal void Add(double share, Pattern other)
    {
        Add(Export, share, other.Export);
        Add(Import, share, other.Import);
        Add(Charge, share, other.Charge);
        Add(Discharge, share, other.Discharge);
        for (var k = 0; k < Generation.Length; k++) Add(Generation[k], share, other.Generation[k]);
    }

    private static void Add(double[] into, double share, double[] kwh)
    {
        for (var i = 0; i < into.Length; i++) into[i] += share * kwh[i];
    }
}
