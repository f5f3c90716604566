using NodaTime;

namespace SolarEconomics;

/// <summary>A tariff history laid on a grid of intervals: compiled once, then billed as often as wanted.</summary>
/// <remarks>Immutable, so safe to share between threads. An interval that a change of rate, clock or day cuts through is shared by time.
/// A billing day counts when an interval starts in it.</remarks>
public sealed partial class BillingPlan
{
    private readonly IReadOnlyList<PlanSegment> _segments;
    private readonly IReadOnlyList<string> _unmet;
    private readonly Lazy<double[]> _importBeforeTax;
    private readonly Lazy<double[]> _importWithTax;
    private readonly Lazy<double[]> _export;

    private BillingPlan(TariffHistory history, IntervalGrid grid, DateTimeZone billingZone, IReadOnlyList<DateSpan> periods, IReadOnlyList<PlanSegment> segments, IReadOnlyList<string> unmet)
    {
        _unmet = unmet;
        BillingZone = billingZone;
        History = history;
        Grid = grid;
        Periods = periods;
        _segments = segments;
        _importBeforeTax = new Lazy<double[]>(() => PricesOf(EnergySide.Import, withTax: false));
        _importWithTax = new Lazy<double[]>(() => PricesOf(EnergySide.Import, withTax: true));
        _export = new Lazy<double[]>(() => PricesOf(EnergySide.Export, withTax: false));
    }

    /// <summary>The tariff history that bills.</summary>
    public TariffHistory History { get; }

    /// <summary>The intervals that are billed.</summary>
    public IntervalGrid Grid { get; }

    /// <summary>The billing periods, cut to the days that the grid touches.</summary>
    public IReadOnlyList<DateSpan> Periods { get; }

    /// <summary>Bills of the energy through the meter, one for each period.</summary>
    /// <param name="importKwh">Energy taken from the grid in each interval. Unit: kWh.</param>
    /// <param name="exportKwh">Energy sent to the grid in each interval. Unit: kWh. Never netted with import.</param>
    /// <exception cref="ArgumentException">A column has another length than the grid, or holds no finite number somewhere.</exception>
    public IReadOnlyList<Bill> Bills(ReadOnlySpan<double> importKwh, ReadOnlySpan<double> exportKwh)
    {
        CheckColumns(importKwh, exportKwh);
        return Bills(new BillRun(importKwh, exportKwh, new BillCarry()));
    }

    /// <summary>Bills of all that the meter counts, one for each period.</summary>
    /// <param name="energy">The columns; import and export as long as the grid, the others too or empty.</param>
    /// <exception cref="ArgumentException">A column has another length than the grid, or holds no finite number somewhere.</exception>
    public IReadOnlyList<Bill> Bills(MeteredEnergy energy)
    {
        ArgumentNullException.ThrowIfNull(energy);
        CheckColumn(energy.ImportKwh, nameof(energy.ImportKwh));
        CheckColumn(energy.ExportKwh, nameof(energy.ExportKwh));
        if (energy.ControlledLoadKwh.Length > 0) CheckColumn(energy.ControlledLoadKwh, nameof(energy.ControlledLoadKwh));
        if (energy.CurtailedKwh.Length > 0) CheckColumn(energy.CurtailedKwh, nameof(energy.CurtailedKwh));
        if (energy.ReactiveKvarh.Length > 0) CheckColumn(energy.ReactiveKvarh, nameof(energy.ReactiveKvarh));
        if (energy.UseKwh.Length > 0) CheckColumn(energy.UseKwh, nameof(energy.UseKwh));
        if (energy.GenerationKwh.Length > 0) CheckColumn(energy.GenerationKwh, nameof(energy.GenerationKwh));
        return Bills(new BillRun(energy, new BillCarry()));
    }

    private Bill[] Bills(BillRun run)
    {
        var bills = new Bill[Periods.Count];
        var ticks = new PlanTicks(Grid);
        for (int period = 0, segment = 0; period < bills.Length; period++)
        {
            var lines = new List<BillLine>();
            var tariff = _segments[segment].Tariff;
            for (; segment < _segments.Count && _segments[segment].Period == period; segment++)
            {
                tariff = _segments[segment].Tariff;
                var own = run.As(tariff, ticks);
                foreach (var part in _segments[segment].Parts) part.AddLines(own, lines);
            }
            bills[period] = BillWriter.Total(Periods[period], tariff, lines, _unmet);
        }
        return bills;
    }

    /// <summary>Price of import before tax in one interval, per kWh, all parts added; 0 outside every period.</summary>
    /// <param name="interval">0 to the grid's count less 1.</param>
    public double ImportPricePerKwhBeforeTax(int interval) => _importBeforeTax.Value[interval];

    /// <summary>Price of import with tax in one interval, per kWh, all parts added; 0 outside every period.</summary>
    /// <param name="interval">0 to the grid's count less 1.</param>
    public double ImportPricePerKwhWithTax(int interval) => _importWithTax.Value[interval];

    /// <summary>Paid for export in one interval, per kWh, all parts added; 0 outside every period.</summary>
    /// <param name="interval">0 to the grid's count less 1.</param>
    /// <remarks>Before tax, if the tariff taxes its feed-in at all.</remarks>
    public double ExportPricePerKwh(int interval) => _export.Value[interval];

    /// <summary>Prices of import before tax, one per interval.</summary>
    public ReadOnlySpan<double> ImportPricesPerKwhBeforeTax => _importBeforeTax.Value;

    /// <summary>Prices of import with tax, one per interval.</summary>
    public ReadOnlySpan<double> ImportPricesPerKwhWithTax => _importWithTax.Value;

    /// <summary>Prices paid for export, one per interval.</summary>
    public ReadOnlySpan<double> ExportPricesPerKwh => _export.Value;

    /// <summary>The clock by which billing days start and end.</summary>
    public DateTimeZone BillingZone { get; }

    internal IReadOnlyList<PlanSegment> Segments => _segments;

    internal double[] PricesOf(EnergySide side, bool withTax)
    {
        var prices = new double[Grid.Count];
        foreach (var segment in _segments)
            foreach (var part in segment.Parts)
                part.AddPrices(side, withTax, prices);
        return prices;
    }

    internal void CheckColumns(ReadOnlySpan<double> importKwh, ReadOnlySpan<double> exportKwh)
    {
        CheckColumn(importKwh, nameof(importKwh));
        CheckColumn(exportKwh, nameof(exportKwh));
    }

    private void CheckColumn(ReadOnlySpan<double> kwh, string name)
    {
        if (kwh.Length != Grid.Count) throw Throw.WrongLength(name, kwh.Length, Grid.Count);
        if (double.IsFinite(BandSums.Total(kwh))) return;
        for (var i = 0; i < kwh.Length; i++)
            if (!double.IsFinite(kwh[i])) throw Throw.NotFinite(name, i);
    }
}
