namespace SolarEconomics;

/// <summary>A plant on its way through the years.</summary>
internal sealed class YearsRun
{
    private readonly EnergySystem _system;
    private readonly Conditions _first;
    private readonly YearsAhead _plan;
    private readonly TariffYears? _tariffs;
    private readonly double[] _ages;
    private readonly double[] _factors;
    private double _batteryAge;
    private double _batteryCycles;
    private double _storedKwh;
    private double _daysSinceEqualised;

    internal YearsRun(EnergySystem system, Conditions conditions, YearsAhead plan)
    {
        ConditionsCheck.Demand(system, conditions);
        var days = BandSums.Total(conditions.Time.Hours) / 24;
        if (days is < 364 or > 367) throw Throw.NotAYear(days);
        foreach (var name in plan.Renewals.Select(r => r.Array).Concat(plan.ArrayAges.Keys))
            if (conditions.Arrays.All(a => a.Name != name)) throw Throw.NoSuchArray(name, conditions.Arrays.Select(a => a.Name));
        (_system, _first, _plan) = (system, conditions, plan);
        _tariffs = plan.Tariffs is { } tariffs ? new TariffYears(tariffs, conditions.Time) : null;
        _ages = [.. conditions.Arrays.Select(a => plan.ArrayAges.GetValueOrDefault(a.Name))];
        _factors = [.. conditions.Arrays.Select(_ => 1.0)];
        (_batteryAge, _batteryCycles) = (plan.BatteryAge, plan.BatteryCycles);
        _storedKwh = system.Battery?.StoredAtStartKwh ?? 0;
        _daysSinceEqualised = system.Battery?.Equalising?.DaysSinceAtStart ?? 0;
    }

    internal YearOfFlows Next(int year, Control control, CancellationToken cancellation)
    {
        foreach (var renewal in _plan.Renewals.Where(r => r.Year == year))
            for (var k = 0; k < _ages.Length; k++)
                if (_first.Arrays[k].Name == renewal.Array) (_ages[k], _factors[k]) = (0, renewal.PowerFactor);
        var conditions = ConditionsOf(year, out var arrayFactor);
        var system = SystemNow();
        var flows = system.Run(conditions, control, null, cancellation);
        _storedKwh = system.Battery is { UsableKwh: > 0 } ? flows.StoredKwh[^1] : _storedKwh;
        _daysSinceEqualised = flows.DaysSinceEqualised;
        return RowOf(year, flows.Totals, system, arrayFactor, EnergyCost(flows));
    }

    /// <summary>A year that takes the flows of the one before, while everything ages, grows and is replaced as it would be.</summary>
    internal YearOfFlows Repeat(int year, YearOfFlows before) =>
        RowOf(year, before.Totals, SystemNow(), before.ArrayFactor, before.EnergyCost) with { IsEstimated = true };

    /// <summary>Whether a year is not one more like the year before: an array is renewed or the tariff changes.</summary>
    internal bool Jumps(int year) => _plan.Renewals.Any(r => r.Year == year) || (_tariffs?.ChangesAround(year) ?? false);

    /// <summary>What growth makes of a year's prices.</summary>
    internal double PriceFactor(int year) => Math.Pow(1 + _plan.PriceGrowth, _tariffs?.YearsOfGrowth(year) ?? year - 1);

    /// <summary>Whether a year with about these flows would be the battery's last: the next begins with a new one.</summary>
    internal bool IsLastOfBattery(FlowTotals totals)
    {
        if (_system.Battery is not { UsableKwh: > 0 } battery || !_plan.ReplacesBattery) return false;
        return _plan.Battery.IsSpent(_batteryAge + 1, _batteryCycles + CyclesOfNew(totals, SystemNow(), battery));
    }

    private YearOfFlows RowOf(int year, FlowTotals totals, EnergySystem system, double arrayFactor, double energyCost)
    {
        var age = _batteryAge;
        Age(totals, system);
        var isReplaced = _system.Battery is not null && _plan.ReplacesBattery && _plan.Battery.IsSpent(_batteryAge, _batteryCycles);
        var row = new YearOfFlows(year, totals, system.Battery?.UsableKwh ?? 0, age, _batteryCycles, arrayFactor, energyCost,
            isReplaced ? _plan.BatteryPrice * Math.Pow(1 + _plan.BatteryPriceGrowth, year) : 0) { IsBatteryReplaced = isReplaced };
        if (isReplaced) (_batteryAge, _batteryCycles, _daysSinceEqualised) = (0, 0, 0);
        return row;
    }

    private Conditions ConditionsOf(int year, out double arrayFactor)
    {
        var (all, aged) = (0.0, 0.0);
        var arrays = new List<ArraySupply>();
        for (var k = 0; k < _ages.Length; k++)
        {
            var array = _first.Arrays[k];
            var factor = _factors[k] * _plan.Arrays.MeanFactor(_ages[k], _ages[k] + 1);
            var kwh = BandSums.Total(array.PotentialKwh.Span);
            (all, aged) = (all + kwh, aged + (kwh * factor));
            arrays.Add(array with { PotentialKwh = Scaled(array.PotentialKwh, factor) });
        }
        arrayFactor = all > 0 ? aged / all : 0;
        var use = Math.Pow(1 + _plan.UseGrowth, year - 1);
        var prices = PriceFactor(year);
        var priced = _tariffs is null ? _first : _tariffs.Price(_first, year);
        var conditions = priced with
        {
            Load = LoadSeries.Of(_first.Time, [.. _first.Load.Parts.Select(part => part with { Kwh = Scaled(part.Kwh, use) })]),
            Arrays = arrays,
            ImportPricePerKwh = Scaled(priced.ImportPricePerKwh, prices),
            ExportPricePerKwh = Scaled(priced.ExportPricePerKwh, prices),
        };
        return _plan.Change is null ? conditions : _plan.Change(year, conditions) ?? throw Throw.NoConditionsOfYear(year);
    }

    /// <summary>Energy fades, power stays: reserve and charge are cut to what the battery still holds.</summary>
    private EnergySystem SystemNow()
    {
        if (_system.Battery is not { } battery) return _system;
        var usable = battery.UsableKwh * _plan.Battery.ShareLeft(_batteryAge, _batteryCycles);
        return _system with
        {
            Battery = battery with
            {
                UsableKwh = usable, ReserveKwh = Math.Min(battery.ReserveKwh, usable), StoredAtStartKwh = Math.Min(_storedKwh, usable),
                Equalising = battery.Equalising is { } plan ? plan with { DaysSinceAtStart = _daysSinceEqualised } : null,
            },
        };
    }

    private void Age(FlowTotals totals, EnergySystem now)
    {
        for (var k = 0; k < _ages.Length; k++) _ages[k]++;
        if (now.Battery is null || _system.Battery is not { UsableKwh: > 0 } battery) return;
        _batteryAge++;
        _batteryCycles += CyclesOfNew(totals, now, battery);
    }

    /// <summary>Full cycles of the battery as it was when new.</summary>
    private static double CyclesOfNew(FlowTotals totals, EnergySystem now, Battery battery) => totals.Cycles * now.Battery!.UsableKwh / battery.UsableKwh;

    private static double EnergyCost(EnergyFlows flows)
    {
        var (import, export) = (flows.Conditions.ImportPricePerKwh, flows.Conditions.ExportPricePerKwh);
        var cost = flows.Totals.GeneratorCost;
        for (var i = 0; i < flows.Time.Count; i++)
        {
            if (!import.IsEmpty) cost += flows.ImportKwh(i) * import.Span[i];
            if (!export.IsEmpty) cost -= flows.ExportKwh(i) * export.Span[i];
        }
        return cost;
    }

    private static ReadOnlyMemory<double> Scaled(ReadOnlyMemory<double> values, double factor)
    {
        if (factor == 1 || values.IsEmpty) return values;
        var scaled = new double[values.Length];
        for (var i = 0; i < scaled.Length; i++) scaled[i] = values.Span[i] * factor;
        return scaled;
    }
}
