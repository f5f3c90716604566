using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>A home's readings laid on a billing grid over whole billing days.</summary>
internal sealed record BilledReadings(IntervalGrid Grid, DateSpan Days, DateTimeZone BillingZone, MeteredEnergy Energy, double CoveredShare)
{
    internal bool IsEstimate { get; init; }

    internal IReadOnlyList<string> Notes { get; init; } = [];

    /// <exception cref="RecordException">The readings hold no import of energy, or several meters and none is chosen, or no day is left between first and last.</exception>
    internal static BilledReadings Of(BilledSpan asked, Readings readings, DateTimeZone zone, IEnumerable<Tariff> tariffs)
    {
        var priced = tariffs.ToList();
        var channels = BilledChannels.Of(readings, asked.Meter, asked.ControlledLoad, priced.Exists(t => t.PricesControlledLoad));
        var pricesReactive = priced.Exists(t => t.Parts.Any(p => p.PricesReactive));
        var reactive = pricesReactive ? channels.Reactive : [];
        var plant = priced.Exists(t => t.IsBuyAllSellAll) ? PlantChannels.Of(readings) : PlantChannels.None;
        var import = channels.Import.Concat(channels.ControlledLoad).ToList();
        var start = import.Min(c => c.Start!.Value);
        var end = import.Max(c => c.End!.Value);
        var billingZone = asked.BillingZone ?? import.Select(c => c.Clock).OfType<DateTimeZone>().FirstOrDefault() ?? BillColumn.MeterClock(start, end, zone);
        var from = asked.From ?? start.InZone(billingZone).Date;
        var to = asked.To ?? (end - Duration.Epsilon).InZone(billingZone).Date.PlusDays(1);
        if (to <= from) throw Throw.NoBillingDay(from, to);
        var grid = BillColumn.Grid(import.Concat(channels.Export).Concat(reactive).Concat(plant.All), from, to, billingZone);
        BillColumn[] columns = [.. ((IReadOnlyList<IReadOnlyList<Channel>>)[channels.Import, channels.Export, channels.ControlledLoad, reactive, .. plant.Sides]).Select(side => new BillColumn(grid, side, billingZone))];
        var share = BillColumn.CoveredShare(columns);
        var estimate = asked.EstimateWhereMissing && share is > 0 and < 1;
        if (estimate)
            foreach (var column in columns) column.FillByTimeOfDay(billingZone);
        var energy = new MeteredEnergy(columns[0].Kwh(), columns[1].Kwh())
        {
            ControlledLoadKwh = channels.ControlledLoad.Count > 0 ? columns[2].Kwh() : [], ReactiveKvarh = reactive.Count > 0 ? columns[3].Kwh() : [],
        };
        if (plant.IsThere) energy = plant.Add(energy, [.. columns.Skip(4).Select(c => c.Kwh())]);
        return new BilledReadings(grid, new DateSpan(from, to), billingZone, energy, share)
        {
            IsEstimate = estimate,
            Notes = [.. channels.Notes, .. NotesOn(import.Concat(channels.Export)), .. NotesOnMissing(priced, reactive.Count > 0), .. plant.Notes],
        };
    }

    private static IEnumerable<string> NotesOnMissing(List<Tariff> tariffs, bool hasReactive)
    {
        if (!hasReactive && tariffs.Exists(t => t.Parts.Any(p => p.PricesReactive))) yield return "No reactive energy is metered: power in kVA counts as in kW, a power factor of 1.";
        if (tariffs.Exists(t => t.EnergyParts(EnergySide.Curtailed).Any())) yield return "No reading tells what the plant held back: nothing is paid for it here.";
    }

    private static IEnumerable<string> NotesOn(IEnumerable<Channel> channels)
    {
        foreach (var channel in channels)
        {
            var longest = Duration.Zero;
            for (var i = 0; i < channel.Count; i++) longest = Duration.Max(longest, channel.Ends[i] - channel.Starts[i]);
            if (longest > Duration.FromHours(1))
                yield return string.Create(CultureInfo.InvariantCulture,
                    $"\"{channel.Name}\" has readings of up to {longest.TotalHours:0.#} hours: each is spread evenly over its days and their hours, so prices by the hour are met on average only.");
        }
    }
}
