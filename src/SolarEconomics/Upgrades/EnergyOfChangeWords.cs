using System.Globalization;

namespace SolarEconomics;

/// <summary>The words of a change in energy.</summary>
internal static class EnergyOfChangeWords
{
    internal static Finding Say(EnergyOfChange change, CultureInfo culture)
    {
        var (before, after) = (change.Before, change.After);
        var (oldKwp, newKwp) = (before.Devices.Sum(d => d.RatedKwp), after.Devices.Sum(d => d.RatedKwp));
        var displaced = change.DisplacedKwh > 0
            ? $" Of it the displaced modules add {Wording.Kwh(change.DisplacedKwh, culture)} in their new place." : "";
        return new Finding(
            (change.GainKwh > 0 ? GenerationWords.AtLeast(after.Weather) : "") + (change.GainKwh >= 0 ? "+" : "") + Wording.Kwh(change.GainKwh, culture),
            $"over the weather given: {Wording.Kwh(before.AcKwh, culture)} become {Wording.Kwh(after.AcKwh, culture)} ({Wording.Percent(change.GainKwh / before.AcKwh, culture)})," +
            string.Create(culture, $" {oldKwp:0.00} kWp become {newKwp:0.00} kWp.") + displaced + Above(change, culture) + PlantOutputWords.Why(after.Weather))
        {
            Tables = [Faces(change, culture), Whole(change, culture), Inverters(change, culture), Months(change, culture), Hours(change, culture)],
            Notes =
            [
                string.Join("; ", change.Changes.Select(c => $"{Wording.Day(c.On, culture)}: {c.Words}")) + ".",
                .. PlantOutputWords.Notes(after, culture),
                "Energy made, not money: what it is worth depends on the hours in which it comes.",
            ],
            Cautions = [Cautions.Panels],
        };
    }

    private static string Above(EnergyOfChange change, CultureInfo culture)
    {
        var more = change.After.CurtailedKwh - change.Before.CurtailedKwh;
        return change.After.IsCurtailmentKnown && more > 0 && change.GainKwh > 0
            ? $" {Wording.Kwh(more, culture)} of it would stand above use and the export limit, for a battery to store or to be held back." : "";
    }

    private static FindingTable Faces(EnergyOfChange change, CultureInfo culture)
    {
        var before = change.Before.Site.Plant.KwpByFaceOn(change.Before.On);
        var after = change.After.Site.Plant.KwpByFaceOn(change.After.On);
        var names = before.Concat(after).Select(f => f.Face).Distinct(StringComparer.Ordinal);
        return new FindingTable("Rated power by face, kWp", ["Face", "Before", "After"],
            [.. names.Select(name => (IReadOnlyList<string>)[name, Kwp(before, name), Kwp(after, name)])]);

        string Kwp(IReadOnlyList<(string Face, double Kwp)> faces, string name) =>
            faces.Where(f => string.Equals(f.Face, name, StringComparison.Ordinal)).Sum(f => f.Kwp).ToString("0.00", culture);
    }

    private static FindingTable Inverters(EnergyOfChange change, CultureInfo culture)
    {
        var names = change.Before.Devices.Concat(change.After.Devices).Select(d => d.Device.Name).Distinct(StringComparer.Ordinal);
        return new FindingTable("By inverter, before → after", ["Device", "kWp", "kWp per kW", "kWh", "Clipped, kWh"], [.. names.Select(name =>
        {
            var (before, after) = (Find(change.Before, name), Find(change.After, name));
            return (IReadOnlyList<string>)
            [
                name,
                Pair(before?.RatedKwp, after?.RatedKwp, "0.00"),
                Pair(before?.DcAcRatio, after?.DcAcRatio, "0.00"),
                Pair(before?.Result.AcKwh, after?.Result.AcKwh, "#,0"),
                Pair(Clipped(before), Clipped(after), "#,0.0"),
            ];
        })]);

        string Pair(double? before, double? after, string format) => $"{(before ?? 0).ToString(format, culture)} → {(after ?? 0).ToString(format, culture)}";
    }

    private static FindingTable Whole(EnergyOfChange change, CultureInfo culture)
    {
        var (before, after) = (change.Before, change.After);
        IReadOnlyList<string> Row(string what, double old, double now) => [what, old.ToString("#,0", culture), now.ToString("#,0", culture), (now - old).ToString("+#,0;−#,0;0", culture)];
        return new FindingTable("Whole plant, kWh", ["What", "Before", "After", "Change"],
        [
            Row("made at AC", before.AcKwh, after.AcKwh),
            Row("clipped by inverters", before.ClippedKwh, after.ClippedKwh),
            .. after.IsCurtailmentKnown
                ? new[] { Row("of it above use and the export limit", before.CurtailedKwh, after.CurtailedKwh), Row("left to use, store or export", before.AcKwh - before.CurtailedKwh, after.AcKwh - after.CurtailedKwh) }
                : [["of it above use and the export limit", "not told", "not told", "not told"]],
        ]);
    }

    private static FindingTable Hours(EnergyOfChange change, CultureInfo culture)
    {
        var table = change.GainByMonthAndHour();
        int[] hours = [.. Enumerable.Range(0, 24).Where(h => Enumerable.Range(0, 12).Any(m => Math.Abs(table[m, h]) >= 0.05))];
        return new FindingTable("Gained by month and hour, kWh", ["Month", .. hours.Select(h => h.ToString("00", culture))], [.. Enumerable.Range(0, 12).Select(m => (IReadOnlyList<string>)
            [culture.DateTimeFormat.GetAbbreviatedMonthName(m + 1), .. hours.Select(h => table[m, h].ToString("#,0.#;−#,0.#;0", culture))])]);
    }

    private static DeviceOutput? Find(PlantOutput output, string name) =>
        output.Devices.FirstOrDefault(d => string.Equals(d.Device.Name, name, StringComparison.Ordinal));

    private static double? Clipped(DeviceOutput? device) => device?.Result.ClippedKwh;

    private static FindingTable Months(EnergyOfChange change, CultureInfo culture)
    {
        var before = change.Before.ByMonth();
        var table = change.GainByMonthAndHour();
        return new FindingTable("Gained by month, kWh", ["Month", "Before", "After", "Gained", "Hour that gains most"],
            [.. change.After.ByMonth().Zip(before, (after, old) => (IReadOnlyList<string>)
            [
                after.Month.ToDateInterval().Start.ToString("MMM uuuu", culture),
                old.Kwh.ToString("#,0", culture),
                after.Kwh.ToString("#,0", culture),
                (after.Kwh - old.Kwh).ToString("+#,0;−#,0;0", culture),
                string.Create(culture, $"{Enumerable.Range(0, 24).MaxBy(hour => table[after.Month.Month - 1, hour]):00}:00"),
            ])]);
    }
}
