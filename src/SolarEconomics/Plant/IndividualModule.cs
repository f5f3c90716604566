using NodaTime;

namespace SolarEconomics;

/// <summary>One module as a thing of its own: where it came from, what a test found, and every place it has been.</summary>
/// <param name="Id">The owner's mark on it. Keep serial numbers out of what is shown.</param>
/// <param name="Type">Its type.</param>
public sealed record IndividualModule(string Id, ModuleType Type)
{
    /// <summary>The maker's date; <see langword="null"/> where unknown.</summary>
    public LocalDate? MadeOn { get; init; }

    /// <summary>Power that a test on arrival found, at 1,000 W/m² and 25 °C. Unit: W. <see langword="null"/> where none was made.</summary>
    public double? TestedW { get; init; }

    /// <summary>Day of that test.</summary>
    public LocalDate? TestedOn { get; init; }

    /// <summary>The places it has been, earliest first.</summary>
    public IReadOnlyList<ModulePlace> Places { get; init => field = [.. value.OrderBy(p => p.From)]; } = [];

    /// <summary>Name of the array it is in on a day; <see langword="null"/> before the first place and where it lies in store.</summary>
    /// <param name="day">Any local calendar day.</param>
    public string? ArrayOn(LocalDate day) => PlaceOn(day)?.Array;

    /// <summary>The place it is in on a day; <see langword="null"/> before the first.</summary>
    internal ModulePlace? PlaceOn(LocalDate day) => Places.LastOrDefault(p => p.From <= day);

    /// <summary>Share of its rating left on a day; <see langword="null"/> where neither the maker's date nor a test is known: it cannot be told.</summary>
    /// <param name="day">Any local calendar day.</param>
    /// <param name="ageing">Rule of ageing. Default: <see langword="null"/>, that of its type.</param>
    /// <remarks>Equation: F(age), or tested / rated · F(age) / F(age at the test); without a maker's date its clock starts at the test.</remarks>
    public double? ShareLeft(LocalDate day, Ageing? ageing = null)
    {
        double Factor(LocalDate from, LocalDate to) => (ageing ?? Type.Ageing).FactorAt(Math.Max(0, Period.DaysBetween(from, to) / 365.25));
        if (TestedW is { } tested && TestedOn is { } testDay)
        {
            var start = MadeOn ?? testDay;
            return Math.Clamp(tested / Type.RatedW * Factor(start, day) / Factor(start, testDay), 0, 1);
        }
        return MadeOn is { } made ? Factor(made, day) : null;
    }
}
