namespace SolarEconomics.Benchmarks;

/// <summary>Every work with a peer that the project does today, made one after the other.</summary>
internal static class AllWork
{
    /// <param name="quick">A small size of each: to see that it runs and the checksums agree, not to judge by.</param>
    internal static IEnumerable<(string Name, Func<Comparison> Make)> List(bool quick)
    {
        var (short_, long_) = quick ? (20_000, 60_000) : (315_648, 1_051_920);
        yield return ("csv", () => IntervalCsv.Warm(MadeTable.Of(short_)));
        yield return ("csv", () => IntervalCsv.Warm(MadeTable.Of(long_)));
        yield return ("csv-cold", () => IntervalCsv.Cold(MadeTable.Of(short_)));
        yield return ("csv-cold", () => IntervalCsv.Cold(MadeTable.Of(long_)));
        yield return ("stamp", () => StampToInstant.Of(MadeTable.Of(short_)));
        yield return ("nem12", () => Nem12.Of(quick ? 60 : 1096));
        yield return ("bills", () => TimeOfUseBills.Of(quick ? 3 : 24));
        yield return ("monte-carlo", () => MonteCarlo.WithWeather(quick ? 100_000 : 1_000_000));
        yield return ("monte-carlo", () => MonteCarlo.WithWeather(10_000));
        yield return ("monte-carlo", () => MonteCarlo.CommonOnly(quick ? 100_000 : 1_000_000));
        yield return ("irr", () => RatesOfReturn.OneAtATime(quick ? 200 : 1000));
        yield return ("irr-batch", () => RatesOfReturn.AllAtOnce(20_000));
        yield return ("battery", BatteryDispatch.OneScenario);
        yield return ("battery", () => BatteryDispatch.SideBySide(quick ? 64 : 1024));
        yield return ("battery", () => BatteryDispatch.ManyYears(quick ? 64 : 1024));
        yield return ("sun", () => SunToAc.Of(quick ? 20_000 : 105_120));
        yield return ("sun", () => SunToAc.Of(8_760, minutes: 60));
        yield return ("load", LibraryStart.Of);
    }
}
