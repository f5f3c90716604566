using CsCheck;

namespace SolarEconomics.Tests;

/// <summary>Random plants, loads and controls for properties of the flow model: every coupling, limit and device, each present or not.</summary>
internal sealed record RandomPlant(EnergySystem System, Conditions Conditions, Control Control)
{
    private const int Hours = 24;

    private static readonly Gen<double> s_efficiency = Gen.Double[0.5, 1];
    private static readonly Gen<double> s_limitKw = Gen.Select(Gen.Int[0, 2], Gen.Double[0, 5]).Select((kind, kw) => kind == 0 ? double.PositiveInfinity : kw);
    private static readonly Gen<double[]> s_kwh = Gen.Select(Gen.Int[0, 2], Gen.Double[0, 6]).Select((kind, kwh) => kind == 0 ? 0 : kwh).Array[Hours];

    private static readonly Gen<Battery> s_battery =
        from usable in Gen.Double[0, 12]
        from charge in s_limitKw
        from discharge in s_limitKw
        from efficiencies in Gen.Select(s_efficiency, s_efficiency)
        from shares in Gen.Select(Gen.Double[0, 1], Gen.Double[0, 1], Gen.Double[0, 0.5])
        from equalising in Gen.Select(Gen.Bool, Gen.Double[0.1, 3], Gen.Double[0, 2])
        from taper in Gen.Select(Gen.Bool, Gen.Double[0, 0.95], Gen.Double[0.01, 1])
        select new Battery
        {
            UsableKwh = usable, MostChargeKw = charge, MostDischargeKw = discharge, ChargeEfficiency = efficiencies.Item1, DischargeEfficiency = efficiencies.Item2,
            StoredAtStartKwh = usable * shares.Item1, ReserveKwh = usable * shares.Item2, SelfDischargePerMonth = shares.Item3, StandbyW = 20 * shares.Item1,
            Taper = taper.Item1 ? new ChargeTaper(taper.Item2, taper.Item3) : null, Temperatures = new TemperatureLimits(0, -10, 45),
            Equalising = equalising.Item1 ? new Equalising(1, 2, equalising.Item2) { DaysSinceAtStart = equalising.Item3 } : null,
        };

    private static readonly Gen<EnergySystem> s_system =
        from battery in s_battery
        from converter in Gen.Select(s_efficiency, s_efficiency, s_limitKw, s_limitKw)
        from grid in Gen.Select(s_limitKw, s_limitKw, Gen.Bool, Gen.Int[0, 3])
        from generatorKw in Gen.Double[0, 4]
        from present in Gen.Select(Gen.Bool, Gen.Bool)
        select new EnergySystem
        {
            Battery = present.Item1 || present.Item2 ? battery : null,
            Converter = new Converter { ToAc = converter.Item1, ToDc = converter.Item2, MostToAcKw = converter.Item3, MostToDcKw = converter.Item4, StandbyW = 30 },
            Grid = grid.Item4 == 0 || (grid.Item1 == 0 && grid.Item2 == 0) ? GridConnection.None : new GridConnection { MostImportKw = grid.Item1, MostExportKw = grid.Item2, RunsInOutages = grid.Item3 },
            Generator = present.Item2 && generatorKw > 0.1 ? new Generator(generatorKw, new FuelLine(0.1, 0.3)) { QuietHours = [HourSpan.Parse("22:00-06:00")] } : null,
        };

    internal static readonly Gen<RandomPlant> Any =
        from system in s_system
        from series in Gen.Select(s_kwh, s_kwh, s_kwh, s_kwh)
        from arrays in Gen.Select(s_efficiency, s_limitKw)
        from outages in Gen.Select(Gen.Int[0, 9].Array[Hours], Gen.Double[-20, 60].Array[Hours])
        from stepHours in Gen.Int[0, 3].Select(k => new[] { 1.0, 0.5, 1 / 12.0, 3.0 }[k])
        from waiting in Gen.Select(Gen.Double[0, 8], Gen.Double[0, 3])
        from seed in Gen.UInt
        select new RandomPlant(system, new Conditions(LoadSeries.Of(Made.HoursOf(Hours, stepHours), series.Item1))
        {
            Arrays =
            [
                new ArraySupply("roof", Coupling.Ac, series.Item2) { Efficiency = arrays.Item1, MostKw = arrays.Item2 },
                new ArraySupply("ground", Coupling.Dc, series.Item3),
            ],
            MostExportKw = series.Item4,
            GridIsOut = outages.Item1.Select(o => o == 0).ToArray(),
            BatteryC = outages.Item2,
            Deferrable = [new DeferrableLoad("water", waiting.Item1, waiting.Item2, HourSpan.Parse("10:00-16:00")), new DeferrableLoad("car", waiting.Item2, 2, HourSpan.Parse("22:00-06:00"))],
        }, Wild(seed));

    /// <summary>Orders anything that is possible, told by a seed and the number of the interval alone.</summary>
    private static Control Wild(uint seed) => Control.Of("wild", now =>
    {
        var random = new Random(unchecked((int)seed + (now.Interval * 7919)));
        double Part(double most) => random.NextDouble() * most;
        var deferrable = now.DeferrableMustKwh + Part(now.DeferrableMayKwh - now.DeferrableMustKwh);
        return random.Next(5) switch
        {
            0 => now.StoreOrCover(),
            1 => Order.Rest with { ShedKwh = Part(now.UseKwh), MostExportKwh = Part(2) },
            2 => Order.Charge(Part(Math.Min(now.SurplusKwh, now.MostChargeKwh))),
            3 => Order.Charge(Part(now.MostChargeFromGridKwh)),
            _ => Order.Rest with { DeferrableKwh = deferrable, GeneratorKwh = Math.Min(now.MostGeneratorKwh, Part(Math.Max(0, now.UseKwh - now.AcGenerationKwh - (now.DcGenerationKwh)))) },
        };
    });
}
