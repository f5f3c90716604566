using System.Globalization;
using NodaTime;

namespace AlderWeir;

/// <summary>Writes counters.csv: what the owner read from displays, or from photographs of them.</summary>
internal static class CounterFile
{
    internal static string Write(Clock clock, Draw draw, TrueFlows truth)
    {
        var text = Text.Sheet();
        text.Append("# Read from the displays in the evening, or later from photographs (the day may be off by \"days uncertain\" either way). The photographs are not part of the demo.\n");
        text.Append("date,device,kwh,days uncertain,photo,note\n");
        foreach (var (reading, place) in Readings(truth).Select((r, i) => (r, i)).OrderBy(r => r.r.Day).ThenBy(r => r.i))
            text.Append(Row(reading, place, clock, draw)).Append('\n');
        return text.ToString();
    }

    private static string Row(Reading reading, int place, Clock clock, Draw draw)
    {
        var seen = reading.Day.PlusDays((int)draw.Between(Stream.PhotoDay, place, -reading.DaysUncertain, reading.DaysUncertain + 1));
        var shown = reading.Installed ? reading.Counter.Opening : reading.Counter.ShownOn(seen, clock);
        if (reading.Swapped) shown = SwapHundredsAndTens(shown);
        var photo = reading.DaysUncertain > 0
            ? $"{reading.Counter.Device.Replace(' ', '-')}-{reading.Day.ToString("uuuu-MM", CultureInfo.InvariantCulture)}.jpg"
            : "";
        return Text.Row(Text.Day(reading.Day), reading.Counter.Device, Text.Whole(shown), Text.Whole(reading.DaysUncertain), photo, reading.Note);
    }

    private static IEnumerable<Reading> Readings(TrueFlows truth)
    {
        var south = new LifetimeCounter("south roof", 4812, Timeline.SouthOn, i => truth.Generation[Arrays.South][i]);
        var westFirst = new LifetimeCounter("west roof first inverter", 0, Timeline.WestOn, i => truth.Generation[Arrays.West][i]);
        var west = new LifetimeCounter("west roof", 0, Timeline.WestReplaced, i => truth.Generation[Arrays.West][i]);
        double GroundDc(int i) => truth.Generation[Arrays.Ground][i] / Arrays.GroundDcToAc;
        var ground = new LifetimeCounter("ground array", 0, Timeline.GroundOn, GroundDc);
        var groundAfterReset = new LifetimeCounter("ground array", 0, Timeline.StringMoved, GroundDc);
        return
        [
            new(south, Timeline.SouthOn, 0, "as fitted; the inverter is second-hand", Installed: true),
            new(south, new(2022, 5, 31), 0, ""),
            new(south, new(2022, 8, 14), 3, "from a holiday album"),
            new(south, new(2022, 12, 31), 0, ""),
            new(south, new(2023, 4, 9), 2, ""),
            new(south, new(2023, 7, 30), 1, "blurred; typed from the photo", Swapped: true),
            new(south, new(2023, 8, 6), 0, ""),
            new(south, new(2023, 12, 31), 0, ""),
            new(south, new(2024, 5, 2), 0, "before cleaning the modules"),
            new(south, new(2024, 5, 14), 0, "one isolator found open"),
            new(south, new(2024, 9, 15), 4, ""),
            new(south, new(2025, 2, 28), 0, ""),

            new(westFirst, Timeline.WestOn, 0, "as fitted", Installed: true),
            new(westFirst, new(2022, 7, 31), 2, ""),
            new(westFirst, new(2022, 12, 31), 0, ""),
            new(westFirst, new(2023, 5, 29), 2, "last seen; its display went dark on 5 June"),

            new(west, Timeline.WestReplaced, 0, "as fitted", Installed: true),
            new(west, new(2023, 8, 18), 0, "the day before one string was moved"),
            new(west, new(2023, 12, 31), 0, ""),
            new(west, new(2024, 6, 23), 3, ""),
            new(west, new(2025, 2, 28), 0, ""),

            new(ground, Timeline.GroundOn, 0, "as fitted; the controller counts DC", Installed: true),
            new(ground, new(2022, 12, 31), 0, ""),
            new(ground, new(2023, 2, 9), 0, "the day before its logger was repaired"),
            new(ground, new(2023, 6, 18), 3, ""),
            new(ground, new(2023, 8, 16), 0, ""),
            new(groundAfterReset, new(2023, 8, 20), 0, "the controller started again from 0 when the moved string was wired in"),
            new(groundAfterReset, new(2023, 12, 31), 0, ""),
            new(groundAfterReset, new(2024, 7, 7), 2, ""),
            new(groundAfterReset, new(2025, 2, 28), 0, ""),
        ];
    }

    /// <summary>The slip of a tired typist: 7,863 becomes 7,683.</summary>
    private static long SwapHundredsAndTens(long kwh)
    {
        var (hundreds, tens) = (kwh / 100 % 10, kwh / 10 % 10);
        return kwh - (hundreds * 100) - (tens * 10) + (tens * 100) + (hundreds * 10);
    }

    private sealed record Reading(LifetimeCounter Counter, LocalDate Day, int DaysUncertain, string Note, bool Swapped = false, bool Installed = false);
}
