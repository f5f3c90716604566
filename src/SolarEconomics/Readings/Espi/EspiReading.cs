using System.Globalization;

namespace SolarEconomics;

/// <summary>One interval reading as the file states it.</summary>
internal sealed class EspiReading
{
    internal int Line { get; init; }

    internal long? Start { get; set; }

    internal long? Duration { get; set; }

    internal long? Value { get; set; }

    internal string RawValue { get; set; } = "";

    internal long? Cost { get; set; }

    internal Quality Quality { get; private set; }

    internal void AddQuality(string code) => Quality |= EspiCodes.QualityOf(code);
}
