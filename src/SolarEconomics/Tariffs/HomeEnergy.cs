using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>All energy of a home, interval by interval, as its records have it or with another plant: what bills, marginal worths and comparisons are asked with.</summary>
/// <remarks>The wanted use is the same whatever plant is asked about; what the plant itself takes goes with the plant. Immutable, so safe to share between threads.
/// <code>MarginalTable.Of(HomeEnergy.Of(site, readings, tariffs).With(Battery.Of(usableKwh: 10, roundTrip: 0.9)))</code></remarks>
public sealed partial class HomeEnergy : IFinding
{
    private readonly EnergySet _recorded;
    private readonly bool _generationIsKnown;

    private HomeEnergy(Site site, TariffHistory tariffs, EnergySet recorded, bool generationIsKnown, MeteredEnergy energy, string plant, IReadOnlyList<string> notes,
        Func<int[], double, MeteredEnergy>? changed = null)
    {
        (Site, Tariffs, _recorded, _generationIsKnown) = (site, tariffs, recorded, generationIsKnown);
        (Energy, PlantName, Notes) = (energy, plant, notes);
        Changed = changed ?? ((intervals, moreUseKwh) => MarginalTable.With(energy, intervals, moreUseKwh));
    }

    /// <summary>Place, clock and plant.</summary>
    public Site Site { get; }

    /// <summary>The tariffs that bill it.</summary>
    public TariffHistory Tariffs { get; }

    /// <summary>The intervals.</summary>
    public IntervalGrid Grid => _recorded.Grid;

    /// <summary>What the meter counts in each, with use and generation.</summary>
    public MeteredEnergy Energy { get; }

    /// <summary>What the meter counts where some intervals use a little more, or generate more where it is below 0: a modelled battery acts anew.</summary>
    internal Func<int[], double, MeteredEnergy> Changed { get; }

    /// <summary>Which plant it is, in words: "as it is", "without any plant", ….</summary>
    public string PlantName { get; }

    /// <summary>What was filled or left out, one sentence each.</summary>
    public IReadOnlyList<string> Notes { get; }

    /// <summary>Whether the records hold a battery at work.</summary>
    public bool HasBattery => _recorded.ChargeKwh.AsSpan().ContainsAnyExcept(0.0) || _recorded.DischargeKwh.AsSpan().ContainsAnyExcept(0.0);

    /// <summary>The energy of a home from its records; where a reading is missing, half way between the lowest and the highest that the records allow.</summary>
    /// <param name="site">Place, clock and plant.</param>
    /// <param name="readings">Its readings; import is needed, and generation where the plant is asked away.</param>
    /// <param name="tariffs">The tariffs that bill it.</param>
    /// <exception cref="RecordException">The readings hold no import.</exception>
    public static HomeEnergy Of(Site site, Readings readings, TariffHistory tariffs)
    {
        ArgumentNullException.ThrowIfNull(site);
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(tariffs);
        if (readings.Of(FlowKind.Import).Count == 0) throw Throw.NoImportReadings(readings);
        var records = SiteRecords.Lay(site, readings);
        var plan = tariffs.On(records.Grid, site.Zone);
        var (low, high) = new EvidenceLadder(records, WorthToDate.PricesOf(plan, records, site)).Ends();
        var flows = records.GenerationIsBounded ? EnergySet.Middle(low, high) : low;
        var missingHours = records.MissingHours(0, records.Grid.Count);
        List<string> notes = missingHours == 0 ? [] :
            [string.Create(CultureInfo.InvariantCulture, $"{missingHours:#,0.#} hours lack a reading; half way between the lowest and the highest that the records allow stands in.")];
        return new HomeEnergy(site, tariffs, flows, records.GenerationIsBounded, Metered(flows), "as it is", notes);
    }

    /// <summary>The same use without any plant.</summary>
    /// <remarks>Equation: import = generation + import + discharge − export − charge − standby, as recorded.</remarks>
    /// <exception cref="RecordException">The records tell no generation.</exception>
    public HomeEnergy WithoutPlant()
    {
        if (!_generationIsKnown) throw Throw.NoGenerationReadings(Site);
        var use = new double[Grid.Count];
        for (var i = 0; i < use.Length; i++) use[i] = _recorded.WantedKwh(i);
        var none = new double[use.Length];
        return new HomeEnergy(Site, Tariffs, _recorded, true, new MeteredEnergy(use, none) { UseKwh = use, GenerationKwh = none }, "without any plant", Notes);
    }

    /// <summary>Bills of this energy, by calendar month unless periods are given.</summary>
    /// <param name="options">How it is cut into bills. Default: by calendar month.</param>
    /// <exception cref="TariffException">No tariff was in force on the first day.</exception>
    public IReadOnlyList<Bill> Bills(BillingOptions? options = null) => Tariffs.On(Grid, Site.Zone, options ?? new BillingOptions()).Bills(Energy);

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        string Figure(double[] kwh) => kwh.Sum().ToString("#,0", culture) + " kWh";
        return new Finding(Figure(Energy.ImportKwh), $"taken from the grid {PlantName}, and {Figure(Energy.ExportKwh)} sent.")
        {
            Notes = Notes,
            Tables = [new FindingTable($"The home {PlantName}", ["flow", "energy"],
                [["use", Figure(Energy.UseKwh)], ["generation", Figure(Energy.GenerationKwh)], ["import", Figure(Energy.ImportKwh)], ["export", Figure(Energy.ExportKwh)]])],
        };
    }

    private static MeteredEnergy Metered(EnergySet flows)
    {
        var use = new double[flows.Grid.Count];
        for (var i = 0; i < use.Length; i++) use[i] = flows.WantedKwh(i) + flows.StandbyKwh[i];
        return new MeteredEnergy(flows.ImportKwh, flows.ExportKwh) { UseKwh = use, GenerationKwh = flows.GenerationKwh };
    }
}
