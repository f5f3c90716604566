using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>How a battery's tested capacity falls with the years, with what else its log counts.</summary>
/// <param name="First">Day of the first test.</param>
/// <param name="Last">Day of the last test.</param>
/// <param name="TestedKwh">Each test, brought to 25 °C. Unit: kWh.</param>
/// <param name="Line">The straight line through them: kWh over years from the first test.</param>
/// <param name="Cycles">Full cycles counted between the first and the last row that counts them; <see langword="null"/> with fewer than two.</param>
/// <param name="WaterLitres">Water filled in. Unit: litres.</param>
/// <param name="CellSpreadV">First and last cell spread. Unit: V; <see langword="null"/> with fewer than two.</param>
/// <param name="Untempered">Tests without a temperature, taken as they stand.</param>
public sealed record CapacityTrend(
    LocalDate First, LocalDate Last, IReadOnlyList<double> TestedKwh, LineFit Line, double? Cycles, double WaterLitres, (double First, double Last)? CellSpreadV, int Untempered) : IFinding
{
    private const double DaysPerYear = 365.25;

    /// <summary>Share of the capacity at the first test that is lost each year; below 0 where it seems to grow.</summary>
    public double LostPerYear => -Line.Slope / Line.Intercept;

    /// <summary>Range of <see cref="LostPerYear"/> that holds in 95 of 100 such logs, tests taken as independent.</summary>
    public ConfidenceInterval LostPerYearInterval
    {
        get
        {
            var slope = Line.SlopeInterval();
            return new ConfidenceInterval(-slope.High / Line.Intercept, -slope.Low / Line.Intercept, slope.Level);
        }
    }

    internal BatteryAgeing Ageing(BatteryLog log, double cycleFade, double? newKwh)
    {
        var byWork = Require.Within(cycleFade, 0, 0.01, "a fraction per full cycle; 0.005 % is written 0.00005") * (cycleFade > 0 ? CyclesPerYear(log) : 0);
        var capacityKwh = newKwh is { } kwh ? Require.Within(kwh, 0.001, 1000, "kWh when new", nameof(newKwh)) : Line.Intercept;
        var byCalendar = (-Line.Slope / capacityKwh) - byWork;
        if (byCalendar is not (>= 0 and <= 0.2)) throw Throw.NoCalendarFade(byCalendar, byWork, TestedKwh.Count);
        return new BatteryAgeing
        {
            CalendarFade = byCalendar,
            CycleFade = cycleFade,
            Origin = string.Create(CultureInfo.InvariantCulture, $"measured by {TestedKwh.Count} capacity tests from {Wording.Day(First, CultureInfo.InvariantCulture)} to ") +
                string.Create(CultureInfo.InvariantCulture, $"{Wording.Day(Last, CultureInfo.InvariantCulture)}: {byCalendar * 100:0.00} % a year by the calendar, ") +
                (cycleFade > 0 ? string.Create(CultureInfo.InvariantCulture, $"{byWork * 100:0.00} % by work as its maker states") : "nothing laid on work"),
        };
    }

    private static double CyclesPerYear(BatteryLog log)
    {
        var rows = log.Of(BatteryLogKind.Cycles);
        if (rows.Count < 2 || rows[0].Date == rows[^1].Date) throw Throw.LogTooShort("battery log as cycles", rows.Count, 2);
        return (rows[^1].Value - rows[0].Value) / (Period.DaysBetween(rows[0].Date, rows[^1].Date) / DaysPerYear);
    }

    internal static CapacityTrend Of(BatteryLog log, double sharePerKelvin)
    {
        var tests = log.Of(BatteryLogKind.CapacityTest);
        if (tests.Count < 3) throw Throw.LogTooShort("battery log as capacity tests", tests.Count, 3);
        var years = tests.Select(t => Period.DaysBetween(tests[0].Date, t.Date) / DaysPerYear).ToArray();
        var kwh = tests.Select(t => t.CellC is { } c ? t.Value / (1 - (sharePerKelvin * (25 - c))) : t.Value).ToArray();
        return new CapacityTrend(tests[0].Date, tests[^1].Date, kwh, LineFit.Of(years, kwh), Ends(log, BatteryLogKind.Cycles) is { } cycles ? cycles.Last - cycles.First : null,
            log.Of(BatteryLogKind.Water).Sum(e => e.Value), Ends(log, BatteryLogKind.CellSpread), tests.Count(t => t.CellC is null));
    }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        var interval = LostPerYearInterval;
        return new Finding($"{Wording.Percent(LostPerYear, culture)} a year", $"of its capacity is what the battery lost, from {TestedKwh.Count} tests between {Wording.Day(First, culture)} and " +
            $"{Wording.Day(Last, culture)}; the tests allow {Wording.Percent(interval.Low, culture)} to {Wording.Percent(interval.High, culture)}." +
            (Cycles is { } cycles ? $" It did {cycles.ToString("#,0", culture)} full cycles in its log." : "") +
            (CellSpreadV is { } spread ? $" Its cells lay {(spread.First * 1000).ToString("0", culture)} mV apart at first and {(spread.Last * 1000).ToString("0", culture)} mV at last." : ""))
        {
            Notes =
            [
                "A straight line through the tests, each brought to 25 °C where its temperature was read; load and end voltage are taken as the same in all.",
                $"{WaterLitres.ToString("0.#", culture)} litres of water were filled in.",
                .. Untempered > 0 ? [$"{Untempered.ToString(culture)} tests have no temperature and stand as they are."] : Array.Empty<string>(),
            ],
            Cautions = [SolarEconomics.Cautions.Batteries],
        };
    }

    private static (double First, double Last)? Ends(BatteryLog log, BatteryLogKind kind) => log.Of(kind) is { Count: > 1 } rows ? (rows[0].Value, rows[^1].Value) : null;
}
