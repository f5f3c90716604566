using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>The energy between two states of a counter.</summary>
/// <param name="Kwh">Energy counted between them.</param>
/// <param name="WentBack">Whether the later state is below the earlier one.</param>
/// <param name="Words">How a step back was read; empty otherwise.</param>
internal readonly record struct CounterStep(double Kwh, bool WentBack, string Words)
{
    /// <summary>Without a pace to go by, a register is held to have run over where both states are at most this share of its size from its top.</summary>
    private const double NearTop = 0.02;

    /// <summary>Where the pace before bears it out, they may be this far from it: typed readings stand months apart.</summary>
    private const double AtPaceFromTop = 0.25;

    /// <summary>An amount of energy is at the pace before where it is at most this many times more or less.</summary>
    private const double SamePace = 2;

    /// <summary>Registers people have: whole decades of kWh, and 16, 20, 24, 31 or 32 bits of Wh, 0.01, 0.1 or 1 kWh, smallest first. Unit: kWh.</summary>
    private static readonly double[] Sizes =
    [
        .. Enumerable.Range(3, 7).Select(digits => Math.Pow(10, digits))
            .Concat(new[] { 16, 20, 24, 31, 32 }.SelectMany(bits => new[] { 1000, 100, 10, 1 }.Select(parts => Math.Pow(2, bits) / parts))).Order(),
    ];

    /// <summary>Reads a step. A step back is a register that ran over where it begins again near 0 from near the top of one, else a reset to 0.</summary>
    /// <param name="fromKwh">The earlier state.</param>
    /// <param name="toKwh">The later state.</param>
    /// <param name="expectedKwh">Energy that the pace before would have given; NaN where none is known.</param>
    internal static CounterStep Between(double fromKwh, double toKwh, double expectedKwh = double.NaN)
    {
        if (toKwh >= fromKwh) return new(toKwh - fromKwh, false, "");
        var size = Array.Find(Sizes, size => IsNear(size, NearTop, fromKwh, toKwh));
        if (size > 0) return Overrun(size, fromKwh, toKwh);
        var atPace = SizeAtPace(fromKwh, toKwh, expectedKwh);
        if (atPace > 0 && !IsAtPace(toKwh, expectedKwh)) return Overrun(atPace, fromKwh, toKwh);
        var other = atPace > 0 ? string.Create(CultureInfo.InvariantCulture, $"; a register of {atPace:0.###} kWh that ran over would add {atPace - fromKwh + toKwh:0.###} kWh and be as likely") : "";
        return new(toKwh, true, string.Create(CultureInfo.InvariantCulture,
            $"a rising counter; it is read as a reset to 0, which adds {toKwh:0.###} kWh; what it counted between the last state and the reset is unknown{other}"));
    }

    /// <summary>The steps of readings that follow each other, each read by the pace of those before it.</summary>
    /// <param name="openingKwh">State before the first.</param>
    /// <param name="readings">Readings, earliest first.</param>
    internal static IEnumerable<CounterStep> Along(double openingKwh, IReadOnlyList<CounterReading> readings)
    {
        var (from, days, kwh) = (openingKwh, 0.0, 0.0);
        for (var i = 0; i < readings.Count; i++)
        {
            var passed = i == 0 ? 0 : Period.DaysBetween(readings[i - 1].Date, readings[i].Date);
            var step = Between(from, readings[i].Kwh, days > 0 ? kwh / days * passed : double.NaN);
            yield return step;
            if (!step.WentBack) (days, kwh) = (days + passed, i == 0 ? 0 : kwh + step.Kwh);
            from = readings[i].Kwh;
        }
    }

    /// <summary>The register that would have run over at the pace before; 0 where none would.</summary>
    internal static double SizeAtPace(double fromKwh, double toKwh, double expectedKwh) =>
        Array.Find(Sizes, size => IsNear(size, AtPaceFromTop, fromKwh, toKwh) && IsAtPace(size - fromKwh + toKwh, expectedKwh));

    private static bool IsNear(double size, double share, double fromKwh, double toKwh) => fromKwh < size && size - fromKwh <= size * share && toKwh <= size * share;

    private static bool IsAtPace(double kwh, double expectedKwh) => expectedKwh > 0 && kwh >= expectedKwh / SamePace && kwh <= expectedKwh * SamePace;

    private static CounterStep Overrun(double size, double fromKwh, double toKwh) => new(size - fromKwh + toKwh, true, string.Create(CultureInfo.InvariantCulture,
        $"a rising counter; it is read as a register of {size:0.###} kWh that ran over, which adds {size - fromKwh + toKwh:0.###} kWh (a reset would add {toKwh:0.###})"));
}
