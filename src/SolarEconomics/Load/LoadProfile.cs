namespace SolarEconomics;

/// <summary>How the use of a day is spread over its hours, on working days and at weekends. Invented shapes: no standard profile and nobody's record.</summary>
public sealed record LoadProfile
{
    /// <summary>A profile from weights; only their proportions count.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="workingDay">Weight of each local hour on Monday to Friday. Shape: 24 values of 0 or more, not all 0.</param>
    /// <param name="weekend">Weight of each local hour on Saturday and Sunday. Shape: 24 values; all 0 where nothing runs then.</param>
    /// <exception cref="ArgumentException">Not 24 values, a negative one, or nothing above 0.</exception>
    public LoadProfile(string name, IReadOnlyList<double> workingDay, IReadOnlyList<double> weekend)
    {
        foreach (var weights in (IReadOnlyList<double>[])[workingDay, weekend])
            if (weights.Count != 24 || weights.Any(w => !(w >= 0 && w < double.PositiveInfinity))) throw Throw.ProfileWeights(name, weights.Count);
        if (workingDay.Sum() + weekend.Sum() == 0) throw Throw.ProfileWeights(name, 24);
        (Name, WorkingDay, Weekend) = (name, workingDay, weekend);
    }

    /// <summary>What it is called.</summary>
    public string Name { get; }

    /// <summary>Weight of each local hour on Monday to Friday.</summary>
    public IReadOnlyList<double> WorkingDay { get; }

    /// <summary>Weight of each local hour on Saturday and Sunday.</summary>
    public IReadOnlyList<double> Weekend { get; }

    /// <summary>The same at every hour.</summary>
    public static LoadProfile Flat { get; } = new("flat", [.. Enumerable.Repeat(1.0, 24)], [.. Enumerable.Repeat(1.0, 24)]);

    /// <summary>A household: a morning hump, a larger one in the evening, days at home at weekends. Invented.</summary>
    public static LoadProfile Household { get; } = new("household (invented)",
        [3, 2.6, 2.5, 2.5, 2.6, 3, 4.5, 6, 5.2, 4, 3.6, 3.8, 4.4, 4, 3.6, 3.8, 4.8, 7, 8.4, 8, 7, 6, 5, 3.8],
        [3.4, 3, 2.6, 2.5, 2.5, 2.7, 3.2, 4.2, 5.6, 6.2, 6, 6.2, 7, 6.2, 5.2, 5, 5.4, 6.8, 7.8, 7.4, 6.6, 5.8, 5, 4]);

    /// <summary>A workshop: working days from seven to five with a break at noon, machines off at weekends. Invented.</summary>
    public static LoadProfile Workshop { get; } = new("workshop (invented)",
        [0.4, 0.4, 0.4, 0.4, 0.4, 0.5, 1.5, 6, 8, 8.5, 8.5, 8, 4, 8, 8.5, 8, 6, 2, 0.8, 0.5, 0.4, 0.4, 0.4, 0.4],
        [.. Enumerable.Repeat(0.4, 24)]);

    internal double WeightAt(Timeline time, int interval) =>
        (time.Clock.WeekdayOf(interval) >= NodaTime.IsoDayOfWeek.Saturday ? Weekend : WorkingDay)[time.Clock.MinuteOfDay[interval] / 60];
}
