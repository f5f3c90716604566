using System.Runtime.InteropServices;
using NodaTime;

namespace SolarEconomics.Benchmarks;

/// <summary>A year of steps from the sun to AC, one array on one inverter. The peer peers/sun_to_ac.py states the same site and types.</summary>
internal static class SunToAc
{
    /// <param name="steps">Steps: 105,120 of five minutes or 8,760 of an hour are a year.</param>
    /// <param name="minutes">Length of a step. The ratio is set for five minutes; a year of hours has a limit of 3 ms instead, which the table shows in ns a step.</param>
    internal static Comparison Of(int steps, int minutes = 5)
    {
        var weather = Make(steps, minutes, out var folder);
        var module = new ModuleType("270 W module", 270);
        var array = new ModuleArray("south", module, inSeries: 14, strings: 1, new Plane(35, 180));
        var model = new GenerationModel(new InverterType("3.5 kW inverter", 3500), array);
        return new Comparison(FormattableString.Invariant($"sun to AC, {minutes}-minute steps, one array"), "step", steps,
            new InProcess<GenerationResult>("ours", () => model.Run(MadeTable.Site, weather), Checksum),
            [new Rival(new PythonPeer("numpy, same equations", "sun_to_ac.py", folder), minutes == 5 ? 6 : null)])
        {
            HoursOfData = steps * minutes / 60.0,
        };
    }

    private static double[] Checksum(GenerationResult result) => [Sum(result.PlaneWm2), Sum(result.DcW), Sum(result.AcW)];

    private static double Sum(ReadOnlySpan<double> values)
    {
        var sum = 0.0;
        foreach (var value in values) sum += value;
        return sum;
    }

    private static Weather Make(int steps, int minutes, out string folder)
    {
        var random = new Random(20_260_304);
        var grid = new IntervalGrid(Instant.FromUtc(2025, 1, 1, 0, 0), Duration.FromMinutes(minutes), steps);
        var clear = Weather.Clear(MadeTable.Site, grid);
        var (global, air, wind) = (new double[steps], new double[steps], new double[steps]);
        for (var i = 0; i < steps; i++)
        {
            global[i] = clear.GlobalWm2[i] * (0.2 + (0.8 * random.NextDouble()));
            air[i] = 5 + (15 * random.NextDouble());
            wind[i] = 8 * random.NextDouble();
        }
        folder = Directory.CreateDirectory(Places.Made(FormattableString.Invariant($"weather-{minutes}"))).FullName;
        Write(folder, "grid.f64", [grid.Start.ToUnixTimeSeconds(), grid.Step.TotalSeconds]);
        Write(folder, "global.f64", global);
        Write(folder, "air.f64", air);
        Write(folder, "wind.f64", wind);
        return Weather.OfGlobal(grid, global, air, wind, "made for the benchmark");
    }

    private static void Write(string folder, string file, double[] values) =>
        File.WriteAllBytes(Path.Combine(folder, file), MemoryMarshal.AsBytes(values.AsSpan()));
}
