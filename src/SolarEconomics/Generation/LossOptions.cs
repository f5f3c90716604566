namespace SolarEconomics;

/// <summary>Choices of <see cref="ExpectedAgainstMeasured"/>.</summary>
public sealed record LossOptions
{
    /// <summary>Tariffs that price what was lost. Default: <see langword="null"/>, no money.</summary>
    public TariffHistory? Tariffs { get; init; }

    /// <summary>Receipts, to set what a failure cost beside what it lost. Default: <see langword="null"/>.</summary>
    public Ledger? Ledger { get; init; }

    /// <summary>Weather over the days of the record, as a reference beside sister arrays; needs arrays in the plant. With it heat and what a full battery held back can be told too. Default: <see langword="null"/>.</summary>
    public Weather? Weather { get; init; }

    /// <summary>Most that may go to the grid, in kW: until export comes near it a full battery holds nothing back. Default: <see langword="null"/>, every mark of the record counts as held back.</summary>
    public double? ExportLimitKw { get; init => field = value is { } limit ? Require.Within(limit, 0.001, 1e6, "kW", nameof(ExportLimitKw)) : null; }

    /// <summary>Seasonal shade found in the record, for the model through <see cref="Weather"/>. Default: none.</summary>
    public IReadOnlyList<ShadeEnvelope> Shade { get; init; } = [];

    /// <summary>A day is short below this ratio to its usual level. Range: 0.3 to 0.98. Default: 0.8; a sister under other clouds scatters by 5 to 15 % a day.</summary>
    public double ShortBelow { get; init => field = Require.Within(value, 0.3, 0.98, "a ratio to the usual level", nameof(ShortBelow)); } = 0.8;

    /// <summary>Shorter events are left out as weather, except days of next to nothing. Range: 1 to 30. Default: 3.</summary>
    public int FewestDays { get; init => field = (int)Require.Within(value, 1, 30, "days", nameof(FewestDays)); } = 3;
}
