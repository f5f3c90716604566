using NodaTime;

namespace SolarEconomics;

/// <summary>An array in its place: behind which device, on which of its inputs, from which day to which.</summary>
/// <param name="Array">The array, on its face.</param>
/// <param name="Device">Name of the device behind it.</param>
/// <remarks>Days are half-open: <c>[From, Until)</c>. Immutable, so safe to share between threads.</remarks>
public sealed record Placement(ModuleArray Array, string Device)
{
    /// <summary>Input of the device, counted from 1. Default: 1.</summary>
    public int Input { get; init; } = 1;

    /// <summary>First day in this place; <see langword="null"/> where it was always there.</summary>
    public LocalDate? From { get; init; }

    /// <summary>First day on which it was no longer there; <see langword="null"/> while it is.</summary>
    public LocalDate? Until { get; init; }

    /// <summary>The maker's date; <see langword="null"/> where unknown: then the modules' clock starts with <see cref="From"/>, and that is said.</summary>
    public LocalDate? MadeOn { get; init; }

    /// <summary>Share of the rating that a test found; <see langword="null"/> where none was made. Range: above 0 to 1.1.</summary>
    public double? TestedShare { get; init => field = value is { } share ? Require.Within(share, 0.01, 1.1, "a share of the rating; 91 % is written 0.91", nameof(TestedShare)) : null; }

    /// <summary>Day of that test; <see langword="null"/>: the first day in this place.</summary>
    public LocalDate? TestedOn { get; init; }

    /// <summary>Name of the array whose modules these were; <see langword="null"/> where they came from outside.</summary>
    public string? CameFrom { get; init; }

    /// <summary>Whether it stands there on a day.</summary>
    /// <param name="day">Any local calendar day.</param>
    public bool StandsOn(LocalDate day) => !(day < From) && !(day >= Until);

    /// <summary>Age of the modules on a day. Unit: years. 0 where neither the maker's date nor the first day is known.</summary>
    /// <param name="day">Any local calendar day.</param>
    public double AgeYears(LocalDate day) => Math.Max(0, (MadeOn ?? From) is { } start ? Period.DaysBetween(start, day) / 365.25 : 0);

    /// <summary>Share of the rating left on a day: by age alone, or from the test on.</summary>
    /// <param name="day">Any local calendar day.</param>
    /// <param name="ageing">Rule of ageing. Default: that of the module type.</param>
    /// <remarks>Equation: F(age), or tested · F(age) / F(age at the test), held to 0…1. The modules' own clock: a second-hand module has a past.</remarks>
    public double ShareLeft(LocalDate day, Ageing? ageing = null)
    {
        var rule = ageing ?? Array.Module.Ageing;
        var now = rule.FactorAt(AgeYears(day));
        if (TestedShare is not { } tested || (TestedOn ?? From) is not { } testDay) return now;
        var then = rule.FactorAt(AgeYears(testDay));
        return then > 0 ? Math.Clamp(tested * now / then, 0, 1) : 0;
    }

    internal bool Overlaps(Placement other) =>
        !(Until <= other.From) && !(other.Until <= From);
}
