using System.Globalization;

namespace SolarEconomics;

/// <content>The same home with another plant, by the flow model.</content>
public sealed partial class HomeEnergy
{
    /// <summary>The same arrays and use without the battery: generation meets use within each interval, the rest is sent.</summary>
    /// <remarks>What then flows through the meter is a lower bound, as inside an interval generation and use may miss each other.</remarks>
    public HomeEnergy WithoutBattery() => Modelled(new EnergySystem(), "without a battery");

    /// <summary>The same arrays and use with this battery in place of any other.</summary>
    /// <param name="battery">The battery, its figures counted at the board.</param>
    /// <param name="control">Who decides. Default: <see cref="Control.SelfConsumption"/>.</param>
    /// <exception cref="ImpossibleOrderException">The control ordered what cannot be done.</exception>
    public HomeEnergy With(Battery battery, Control? control = null)
    {
        ArgumentNullException.ThrowIfNull(battery);
        return Modelled(new EnergySystem { Battery = battery }, string.Create(CultureInfo.InvariantCulture, $"with a {battery.Name} of {battery.UsableKwh:0.#} kWh"), control);
    }

    /// <summary>The same use with the recorded generation, further arrays, and what stands between them and the grid.</summary>
    /// <param name="system">Battery, converter and grid connection.</param>
    /// <param name="plant">Which plant it is, in words that go on from "the home": "with six more panels".</param>
    /// <param name="control">Who decides. Default: <see cref="Control.SelfConsumption"/>.</param>
    /// <param name="more">Further arrays on the same intervals, as long as <see cref="Grid"/>.</param>
    /// <exception cref="ImpossibleOrderException">The control ordered what cannot be done.</exception>
    /// <exception cref="RecordException">The records tell no generation.</exception>
    /// <exception cref="ArgumentException">An array has another length than the grid.</exception>
    public HomeEnergy Modelled(EnergySystem system, string plant, Control? control = null, params IReadOnlyList<ArraySupply> more)
    {
        ArgumentNullException.ThrowIfNull(system);
        ArgumentNullException.ThrowIfNull(plant);
        ArgumentNullException.ThrowIfNull(more);
        if (!_generationIsKnown) throw Throw.NoGenerationReadings(Site);
        var (use, notes) = UseBesideBattery();
        var conditions = new Conditions(LoadSeries.Of(Timeline.Of(Grid, Site.Zone), use)) { Arrays = [ArraySupply.Ac("as recorded", _recorded.GenerationKwh), .. more] }
            .PricedBy(Tariffs.On(Grid, Site.Zone));
        var decides = control ?? Control.SelfConsumption;
        MeteredEnergy Run(Conditions met) => Metered(system.Run(met, decides));
        return new HomeEnergy(Site, Tariffs, _recorded, true, Run(conditions), plant, [.. Notes, .. notes,
            $"Worked out by the flow model ({decides.Name}): inside an interval generation and use meet fully, so import and export are a lower bound."],
            (intervals, moreUseKwh) => Run(Changing(conditions, intervals, moreUseKwh)));
    }

    private static MeteredEnergy Metered(EnergyFlows flows)
    {
        double[] Of(Func<int, double> kwh) => [.. Enumerable.Range(0, flows.Time.Count).Select(kwh)];
        return new MeteredEnergy(Of(flows.ImportKwh), Of(flows.ExportKwh))
        {
            UseKwh = flows.WantedKwh.ToArray(), GenerationKwh = Of(flows.PotentialKwh), CurtailedKwh = flows[FlowPath.ArrayCurtailed].ToArray(),
        };
    }

    /// <summary>A little more use in some intervals, or a little more generation where it is below 0.</summary>
    private static Conditions Changing(Conditions conditions, int[] intervals, double moreUseKwh)
    {
        var kwh = new double[conditions.Time.Count];
        foreach (var i in intervals) kwh[i] = Math.Abs(moreUseKwh);
        return moreUseKwh < 0
            ? conditions with { Arrays = [.. conditions.Arrays, ArraySupply.Ac("one more kWh", kwh)] }
            : conditions with { Load = conditions.Load.With(new LoadPart("one more kWh", kwh)) };
    }

    /// <summary>What the home and the plant take, the battery's own standby left out; a little less than nothing in the records counts as nothing.</summary>
    private (double[] Use, IReadOnlyList<string> Notes) UseBesideBattery()
    {
        var days = Grid.LocalDays(Site.Zone);
        var batteries = Site.Plant.Devices.Where(d => d.UsableKwh > 0).ToList();
        var use = new double[Grid.Count];
        var (below, count) = (0.0, 0);
        for (var i = 0; i < use.Length; i++)
        {
            var batteryKwh = batteries.Where(d => d.InServiceOn(days[i])).Sum(d => d.StandbyW) / 1000 * Grid.StepHours;
            use[i] = _recorded.WantedKwh(i) + _recorded.StandbyKwh[i] - batteryKwh;
            if (use[i] >= 0) continue;
            // The last digits of adding and taking off are no contradiction of meters.
            if (use[i] < -1e-9) (below, count) = (below - use[i], count + 1);
            use[i] = 0;
        }
        return (use, count == 0 ? [] : [string.Create(CultureInfo.InvariantCulture, $"In {count:#,0} intervals the meters leave less than no use, {below:0.0##} kWh in all; they count as none.")]);
    }
}
