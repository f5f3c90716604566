using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>How a battery's capacity fell by its own tests.</summary>
/// <param name="From">Day of the first test.</param>
/// <param name="Tests">Number of tests.</param>
/// <param name="StartKwh">Capacity on the line at the first test. Unit: kWh.</param>
/// <param name="FadePerYear">Share of it lost a year; negative where the tests rose.</param>
/// <param name="Low">Lower end of the 95 % interval.</param>
/// <param name="High">Upper end of the 95 % interval.</param>
public sealed record BatteryFade(LocalDate From, int Tests, double StartKwh, double FadePerYear, double Low, double High) : IFinding
{
    /// <summary>The largest cell spread in the log. Unit: mV; <see langword="null"/> where none was written down.</summary>
    public double? HighestCellSpreadMv { get; init; }

    /// <summary>Whether the tests were made at temperatures more than 5 K apart; <see langword="null"/> where they were not written down.</summary>
    public bool? TemperaturesDiffer { get; init; }

    /// <summary>Whether the tests tell a fade from none at all.</summary>
    public bool IsSure => Low > 0;

    /// <summary>The ageing to go on with. Calendar and cycles cannot be told apart by the tests: all of it is laid on the calendar.</summary>
    public BatteryAgeing AsAgeing() => new() { CalendarFade = Math.Clamp(FadePerYear, 0, 0.2) };

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        var words = $"of the capacity is lost a year by {Tests.ToString(culture)} tests, between {Wording.Percent(Low, culture)} and {Wording.Percent(High, culture)} with 95 % confidence.";
        if (!IsSure) words += " The tests cannot tell it from none.";
        var notes = new List<string> { "A straight line through the tests; calendar and cycles are not told apart, and all of the fade is laid on the calendar." };
        if (TemperaturesDiffer is not false)
            notes.Add(TemperaturesDiffer is null ? "Temperatures of the tests are not written down: cold tests look like fade." : "The tests were made more than 5 K apart: cold tests look like fade.");
        return new Finding(Wording.Percent(FadePerYear, culture), words) { Notes = notes, Cautions = [Cautions.Batteries] };
    }
}
