namespace SolarEconomics;

/// <summary>The flows at both ends of a rung.</summary>
/// <param name="Low">Flows of the lowest value.</param>
/// <param name="High">Flows of the highest value; <see langword="null"/> where there is no upper end.</param>
/// <param name="MissedKwh">By how much sums had to be missed at worst, because records contradict each other. Unit: kWh.</param>
/// <param name="Doubt">By how much other flows may lie beyond at most; next to nothing unless a search was cut short. Unit: currency.</param>
internal sealed record RungFlows(EnergySet Low, EnergySet? High, double MissedKwh, double Doubt)
{
    // A cent: what the searches may leave open before their flows no longer count as the ends.
    private const double MostDoubt = 0.01;

    /// <summary>Whether the flows are proven to be the ends.</summary>
    internal bool AreEnds => Doubt <= MostDoubt;
}
