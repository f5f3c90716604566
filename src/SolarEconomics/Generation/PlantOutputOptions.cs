namespace SolarEconomics;

/// <summary>Choices of a plant's output.</summary>
public sealed record PlantOutputOptions
{
    /// <summary>Rule of ageing for all modules. Default: <see langword="null"/>, each type's own.</summary>
    public Ageing? Ageing { get; init; }

    /// <summary>Seasonal shade found in the record, for the devices that it names. Default: none.</summary>
    public IReadOnlyList<ShadeEnvelope> Shade { get; init; } = [];

    /// <summary>Most that may go to the grid. Unit: kW. Default: <see langword="null"/>, no limit stated. Needs <see cref="UseKwh"/>.</summary>
    public double? ExportLimitKw { get; init; }

    /// <summary>Use of the site in each step of the weather, in kWh. Default: <see langword="null"/>, not known: then curtailment is not told.</summary>
    public IReadOnlyList<double>? UseKwh { get; init; }

    /// <summary>Changes the model of each device before it runs: sky, dirt, cables, down time. Default: nothing.</summary>
    public Func<GenerationModel, GenerationModel> Model { get; init; } = model => model;
}
