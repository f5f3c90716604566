namespace SolarEconomics;

/// <summary>Names the channel that a column becomes: its flow, its device in the plant, and what is below zero.</summary>
internal static class Directions
{
    internal static IEnumerable<Channel> Split(ColumnEnergy energy, ValueColumn column, Plant plant, int extra, string file, ProblemList problems)
    {
        var (device, point) = DeviceOf(column.Meaning, plant, problems, column.Index + 1);
        Doubts.Flag(energy, column.Meaning.Flow, device is null ? null : plant.Find(device), column.Name, column.Index + 1, problems);
        if (column is { IsEnergy: true, Meaning.Kind: ColumnKind.Net } && Negatives.Next(energy.Values, 0) >= 0)
        {
            var (above, below) = Ways(column.Meaning.Flow);
            var at = above is FlowKind.Import or FlowKind.Export ? MeasurementPoint.Meter : point;
            problems.Note(0, column.Index + 1, column.Meaning.Header, $"both directions under \"{column.Name}\"",
                $"one; values above zero are read as {HeaderWords.Name(above)}, those below as {HeaderWords.Name(below)}. If it is the other way round, correct the column{By(column, below)}");
            yield return Make($"{column.Name} {HeaderWords.Name(above)}", above, OneSide(energy, +1), column, device, at, extra, file);
            yield return Make($"{column.Name} {HeaderWords.Name(below)}", below, OneSide(energy, -1), column, device, at, 0, file);
            yield break;
        }
        Negatives.Flag(energy, column.Meaning.Flow, column.Name, column.Index + 1, problems);
        if (column is { IsEnergy: true, Meaning.Flow: FlowKind.Unknown }) AskForDirections(energy, column, problems);
        if (column.HasNoUnit)
        {
            var sum = default(CompensatedSum);
            foreach (var value in energy.Values) sum.Add(value);
            problems.Lost(0, column.Index + 1, column.Meaning.Header,
                FormattableString.Invariant($"no unit for \"{column.Name}\": its numbers add up to {sum.Total:0.000000} kWh if they are kWh, and to {sum.Total / 1000:0.000000} kWh if they are Wh"),
                "a unit in the header or in a row of units; say UnitWhereNone or ColumnMeaning.Of in the options. Until then it is kept and counted nowhere");
        }
        yield return Make(column.Name, column.Meaning.Flow, energy, column, device, point, extra, file);
    }

    /// <summary>A column that names no flow and goes both ways is a balance of two: what it adds up to is neither.</summary>
    private static void AskForDirections(ColumnEnergy energy, ValueColumn column, ProblemList problems)
    {
        var (above, below) = (default(CompensatedSum), default(CompensatedSum));
        for (var i = 0; i < energy.Count; i++)
        {
            if (energy.Kwh[i] > 0) above.Add(energy.Kwh[i]);
            else below.Add(energy.Kwh[i]);
        }
        if (above.Total <= 0 || below.Total >= 0) return;
        problems.Doubtful(0, column.Index + 1, column.Meaning.Header,
            FormattableString.Invariant($"{above.Total:0.######} kWh above zero and {below.Total:0.######} kWh below under \"{column.Name}\", which names no flow"),
            $"one direction, or a register of both. If it holds both, say which way those above zero go{By(column, FlowKind.Import)}, FlowKind.Export, FlowKind.BatteryCharge or FlowKind.BatteryDischarge; until then both are added up and belong to no flow");
    }

    private static string By(ValueColumn column, FlowKind above) => $": ColumnMeaning.Of(\"{column.Meaning.Header}\", FlowKind.{above}, \"{column.UnitName}\", ColumnKind.Net)";

    /// <summary>What a register of both directions holds above and below zero, by the flow that it is said to count.</summary>
    private static (FlowKind Above, FlowKind Below) Ways(FlowKind flow) => flow switch
    {
        FlowKind.Export => (FlowKind.Export, FlowKind.Import),
        FlowKind.BatteryCharge => (FlowKind.BatteryCharge, FlowKind.BatteryDischarge),
        FlowKind.BatteryDischarge => (FlowKind.BatteryDischarge, FlowKind.BatteryCharge),
        _ => (FlowKind.Import, FlowKind.Export),
    };

    private static Channel Make(string name, FlowKind flow, ColumnEnergy energy, ValueColumn column, string? device, MeasurementPoint point, int extra, string file) =>
        new(name, flow, energy.Times, energy.Kwh, energy.Quality)
        {
            Unit = column.UnitName,
            Device = device,
            Point = point,
            File = file,
            ExtraReadings = extra,
            Resets = energy.Resets,
            CounterStates = energy.States,
            CounterEnds = energy.Ends,
        };

    private static ColumnEnergy OneSide(ColumnEnergy energy, int sign) =>
        energy with { Kwh = [.. energy.Kwh.Select(k => Math.Max(0, k * sign))], Quality = [.. energy.Quality] };

    private static (string? Device, MeasurementPoint Point) DeviceOf(ColumnMeaning meaning, Plant plant, ProblemList problems, int column)
    {
        if (meaning.Flow is FlowKind.Import or FlowKind.Export) return (meaning.Device, MeasurementPoint.Meter);
        if (meaning.Device is not { } name) return (null, MeasurementPoint.Unknown);
        var known = plant.Devices.FirstOrDefault(d => string.Equals(d.Name, name, StringComparison.OrdinalIgnoreCase));
        if (known is not null) return (known.Name, known.Point);
        if (plant.Devices.Count > 0)
            problems.Note(0, column, meaning.Header, $"the device \"{name}\", which the plant's description does not name", $"one of its devices, such as {Nearest.List(name, plant.Devices.Select(d => d.Name))}; its measurement point is unknown");
        return (name, MeasurementPoint.Unknown);
    }
}
