namespace SolarEconomics;

/// <summary>A generator's log without kWh: what it gave is read as a range from its fuel.</summary>
/// <param name="RatedKw">Rated power. Unit: kW.</param>
/// <param name="Notes">The lines, in any order.</param>
public sealed record GeneratorLog(double RatedKw, IReadOnlyList<GeneratorNote> Notes)
{
    /// <summary>Fuel burned. Unit: L.</summary>
    public double Litres => Notes.Sum(n => n.Litres);

    /// <summary>Hours run. Unit: h.</summary>
    public double Hours => Notes.Sum(n => n.Hours);

    /// <summary>What it cost. Unit: the currency of the notes.</summary>
    public double Cost => Notes.Sum(n => n.Cost);

    /// <summary>Lowest and highest energy that the fuel allows.</summary>
    /// <param name="thirsty">The fuel line that burns most for a kWh.</param>
    /// <param name="sparing">The fuel line that burns least for a kWh.</param>
    /// <exception cref="ArgumentException">A line burned less than idling by the sparing line takes, or more than full power by the thirsty one.</exception>
    /// <remarks>Equation: kWh = (litres − idle · rated kW · hours) / slope, each note on its own, cut to 0 and to rated kW · hours. Source: offgrid-1.</remarks>
    public EnergyRange Given(FuelLine thirsty, FuelLine sparing)
    {
        ArgumentNullException.ThrowIfNull(thirsty);
        ArgumentNullException.ThrowIfNull(sparing);
        var range = EnergyRange.Exactly(0);
        foreach (var note in Notes)
        {
            var fullKwh = RatedKw * note.Hours;
            var (low, high) = (KwhBy(thirsty, note), KwhBy(sparing, note));
            if (high < low) throw Throw.FuelLinesSwapped();
            if (high < 0 || low > fullKwh) throw Throw.FuelDoesNotFit(note.Date, note.Litres, note.Hours, sparing.Litres(RatedKw, note.Hours, 0), thirsty.Litres(RatedKw, note.Hours, fullKwh));
            range += new EnergyRange(Math.Max(0, low), Math.Min(fullKwh, high));
        }
        return range;
    }

    private double KwhBy(FuelLine line, GeneratorNote note) => (note.Litres - line.Litres(RatedKw, note.Hours, 0)) / line.LitresPerKwh;
}
