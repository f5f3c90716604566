using System.Globalization;

namespace SolarEconomics;

/// <summary>One interval reading as the file states it.</summary>
internal sealed class EspiReading
{
    internal int Line { get; init; }

    internal long? Start { get; set; }

    internal long? Duration { get; set; }

    internal double? Value { get; set; }

    /// <summary>What about it cannot be read; <see langword="null"/> where nothing is.</summary>
    internal string? Fault { get; set; }

    internal string RawValue { get; set; } = "";

    internal long? Cost { get; set; }

    internal Quality Quality { get; private set; }

    internal void AddQuality(string code) => Quality |= EspiCodes.QualityOf(code);
}
