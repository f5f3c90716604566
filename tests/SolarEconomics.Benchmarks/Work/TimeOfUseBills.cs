using System.Runtime.InteropServices;
using NodaTime;

namespace SolarEconomics.Benchmarks;

/// <summary>Monthly bills of fifty time-of-use tariffs, ten structures at five price levels, over two years of half hours.</summary>
internal static class TimeOfUseBills
{
    private const int Tariffs = 50;
    private const int MostRates = 8;
    private const int CellsPerMonth = 3 * 48;

    internal static Comparison Of(int months)
    {
        var zone = MadeTable.Site.Zone;
        var start = new LocalDate(2025, 1, 1).AtStartOfDayInZone(zone).ToInstant();
        var end = new LocalDate(2025, 1, 1).PlusMonths(months).AtStartOfDayInZone(zone).ToInstant();
        var grid = new IntervalGrid(start, Duration.FromMinutes(30), (int)((end - start) / Duration.FromMinutes(30)));
        var random = new Random(20_260_305);
        var importKwh = Enumerable.Range(0, grid.Count).Select(_ => Math.Round(2 * random.NextDouble(), 3)).ToArray();
        var exportKwh = new double[grid.Count];
        var shapes = Enumerable.Range(0, Tariffs).Select(i => TariffShape.Ten[i % 10].Dearer(1 + (0.03m * (i / 10)))).ToList();
        // A plan compiles once and bills as often as wanted: its making is not in the time, as the peers' columns are not.
        var plans = BillingPlans.Of([.. shapes.Select((shape, i) => TariffHistory.Of(shape.ToTariff($"tariff {i}")).On(grid, zone))]);
        var folder = WriteForPeers(grid, importKwh, shapes, months);
        PythonPeer Peer(string name, string way) => new(name, "bills.py", folder, way);
        return new Comparison($"time-of-use bills, {months} months x {Tariffs} tariffs", "interval x tariff", (long)grid.Count * Tariffs,
            new InProcess<double[][]>("ours", () => plans.CostsBeforeRounding(importKwh, exportKwh), Checksum),
            [
                new Rival(Peer("pandas groupby month + band", "groupby"), 400),
                new Rival(Peer("numpy rate[band] * kWh", "indexing"), 10),
                new Rival(Peer("numpy dense rate matrix", "dense"), 5),
                new Rival(Peer("numpy calendar cells", "cells"), 1.2),
            ])
        {
            HoursOfData = grid.Count * grid.StepHours * Tariffs,
        };
    }

    private static double[] Checksum(double[][] costs)
    {
        var totals = costs.Select(months => months.Sum()).ToList();
        return [totals.Sum(), totals.Select((total, i) => total * (i + 1)).Sum()];
    }

    private static string WriteForPeers(IntervalGrid grid, double[] kwh, List<TariffShape> shapes, int months)
    {
        var zone = MadeTable.Site.Zone;
        var local = Enumerable.Range(0, grid.Count).Select(i => grid.StartOf(i).InZone(zone).LocalDateTime).ToList();
        var folder = Directory.CreateDirectory(Places.Made("bills")).FullName;
        void Write<T>(string file, T[] values) where T : struct => File.WriteAllBytes(Path.Combine(folder, file), MemoryMarshal.AsBytes(values.AsSpan()));
        Write("kwh.f64", kwh);
        Write("month.i32", local.Select(t => ((t.Year - 2025) * 12) + t.Month - 1).ToArray());
        Write("cell.i32", local.Select(t => (DayKind(t.DayOfWeek) * 48) + (t.Hour * 2) + (t.Minute / 30)).ToArray());
        Write("bands.u8", shapes.SelectMany(shape => local.Select(t => shape.BandAt(t.Month, t.DayOfWeek, t.Hour))).ToArray());
        Write("rates.f64", shapes.SelectMany(shape => Enumerable.Range(0, MostRates).Select(i => i < shape.Bands.Count ? (double)shape.Bands[i].PerKwh : 0)).ToArray());
        Write("cellbands.u8", shapes.SelectMany(shape => Enumerable.Range(0, months).SelectMany(month => Enumerable.Range(0, CellsPerMonth)
            .Select(cell => shape.BandAt((month % 12) + 1, DayOfKind(cell / 48), cell % 48 / 2)))).ToArray());
        return folder;
    }

    private static int DayKind(IsoDayOfWeek day) => day switch { IsoDayOfWeek.Saturday => 1, IsoDayOfWeek.Sunday => 2, _ => 0 };

    private static IsoDayOfWeek DayOfKind(int kind) => kind switch { 1 => IsoDayOfWeek.Saturday, 2 => IsoDayOfWeek.Sunday, _ => IsoDayOfWeek.Monday };
}
