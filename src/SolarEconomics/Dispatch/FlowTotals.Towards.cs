namespace SolarEconomics;

/// <content>Between two stretches of time.</content>
public sealed partial class FlowTotals
{
    /// <summary>Sums on the straight line from these to others: they close, as both do.</summary>
    /// <param name="other">Sums of a stretch as long.</param>
    /// <param name="share">How far along. Range: 0, these, to 1, the others.</param>
    internal FlowTotals Towards(FlowTotals other, double share)
    {
        double Line(double from, double to) => from + (share * (to - from));
        return new FlowTotals(From, Hours, [.. _kwh.Zip(other._kwh, Line)])
        {
            PotentialKwh = Line(PotentialKwh, other.PotentialKwh),
            WantedKwh = Line(WantedKwh, other.WantedKwh),
            UnservedHours = Line(UnservedHours, other.UnservedHours),
            StoredChangeKwh = Line(StoredChangeKwh, other.StoredChangeKwh),
            ArrayByBatteryToUseKwh = Line(ArrayByBatteryToUseKwh, other.ArrayByBatteryToUseKwh),
            Cycles = Line(Cycles, other.Cycles),
            ThroughputKwh = Line(ThroughputKwh, other.ThroughputKwh),
            HoursFull = Line(HoursFull, other.HoursFull),
            HoursEmpty = Line(HoursEmpty, other.HoursEmpty),
            GeneratorHours = Line(GeneratorHours, other.GeneratorHours),
            GeneratorStarts = (int)Math.Round(Line(GeneratorStarts, other.GeneratorStarts)),
            FuelLitres = Line(FuelLitres, other.FuelLitres),
            GeneratorCost = Line(GeneratorCost, other.GeneratorCost),
        };
    }
}
