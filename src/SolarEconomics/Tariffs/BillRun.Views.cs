namespace SolarEconomics;

/// <content>The same energy as different tariffs look at it.</content>
internal readonly ref partial struct BillRun
{
    /// <summary>The energy as a tariff counts it: its own controlled load or none, netted or not, through the meter or all of use and generation.</summary>
    /// <exception cref="TariffException">The tariff needs use and generation, and they are not known.</exception>
    internal BillRun As(Tariff tariff, PlanTicks ticks)
    {
        var joins = !ControlledLoadKwh.IsEmpty && !tariff.PricesControlledLoad;
        if (!joins && tariff.NetsWithinMinutes == 0 && !tariff.IsBuyAllSellAll) return this;
        if (tariff.IsBuyAllSellAll && (UseKwh.IsEmpty || GenerationKwh.IsEmpty)) throw Throw.NeedsUseAndGeneration(tariff);
        var import = (tariff.IsBuyAllSellAll ? UseKwh : ImportKwh).ToArray();
        var export = (tariff.IsBuyAllSellAll ? GenerationKwh : ExportKwh).ToArray();
        if (joins && !tariff.IsBuyAllSellAll)
            for (var i = 0; i < import.Length; i++) import[i] += ControlledLoadKwh[i];
        if (tariff.NetsWithinMinutes > 0) Net(import, export, tariff.NetsWithinMinutes * 60L, ticks);
        return new BillRun(new MeteredEnergy(import, export)
        {
            ControlledLoadKwh = joins ? [] : ControlledLoadKwh.ToArray(), CurtailedKwh = CurtailedKwh.ToArray(), ReactiveKvarh = ReactiveKvarh.ToArray(),
        }, Carry);
    }

    /// <summary>Leaves in each stretch only what import exceeds export by, or the reverse, in proportion to its intervals.</summary>
    private static void Net(double[] import, double[] export, long seconds, PlanTicks ticks)
    {
        for (var i = 0; i < import.Length;)
        {
            var start = ticks.StartOf(i);
            var end = Math.Min(Math.Max(ticks.FirstFrom(start - (start % seconds) + seconds), i + 1), import.Length);
            var (taken, sent) = (BandSums.Total(import.AsSpan(i, end - i)), BandSums.Total(export.AsSpan(i, end - i)));
            Scale(import.AsSpan(i, end - i), taken > 0 ? Math.Max(0, taken - sent) / taken : 0);
            Scale(export.AsSpan(i, end - i), sent > 0 ? Math.Max(0, sent - taken) / sent : 0);
            i = end;
        }
    }

    private static void Scale(Span<double> kwh, double factor)
    {
        for (var i = 0; i < kwh.Length; i++) kwh[i] *= factor;
    }
}
