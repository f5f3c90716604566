
namespace AlderWeir;

/// <summary>Writes meter.csv: what the meter and the loggers kept of the true flows.</summary>
internal static class MeterFile
{
    internal static string Write(Clock clock, TrueFlows truth)
    {
        var registers = new Register[]
        {
            new(i => truth.Imported[i]),
            new(i => truth.Exported[i]),
            new(i => truth.Generation[Arrays.South][i]),
            new(i => truth.Generation[Arrays.West][i]),
            new(i => truth.Generation[Arrays.Ground][i] / Arrays.GroundDcToAc),
            new(i => truth.Stored[i]),
            new(i => truth.Delivered[i]),
        };
        var missing = MissingColumns(clock);
        var text = Text.Sheet();
        text.Append("# Half hours by the clock of Europe/Dublin, each row named by its start; the repeated autumn hour stands twice, the skipped spring hour not at all.\n");
        text.Append("# An empty field is a missing value; 0.000 before a device was in service. The ground array is counted in DC at its controller, all else in AC.\n");
        text.Append("start,import (kWh),export (kWh),generation south roof (kWh),generation west roof (kWh),generation ground array (kWh),battery charge (kWh),battery discharge (kWh),battery full\n");
        for (var half = 0; half < clock.Count; half++)
        {
            text.Append(Text.Stamp(clock.LocalStartOf(half)));
            for (var column = 0; column < registers.Length; column++)
            {
                var wh = registers[column].MoveWh(half);
                text.Append(',');
                if (!missing[half].HasFlag((Columns)(1 << column))) text.Append(Text.Kwh(wh));
            }
            text.Append(',');
            if (!missing[half].HasFlag(Columns.Full)) text.Append(truth.BatteryFull[half] ? '1' : '0');
            text.Append('\n');
        }
        return text.ToString();
    }

    private static Columns[] MissingColumns(Clock clock)
    {
        var missing = new Columns[clock.Count];
        foreach (var hole in Hole.All)
            for (var half = clock.IndexOf(hole.From); half < clock.IndexOf(hole.To); half++)
                missing[half] |= hole.Where;
        return missing;
    }
}
