using System.Globalization;

namespace SolarEconomics;

/// <summary>One interval reading as the file states it.</summary>
internal sealed class EspiReading
{
    internal int Line { get; init; }

    internal long? Start { get; set; }

    internal long? Duration { get; set; }

    internal double? Value { get; set; }

    /// <summary>Start of the block it stands in, and its place there from 0: a reading without a time of its own follows from them.</summary>
    internal (long? Start, int Place) Block { get; init; }

    /// <summary>What about it cannot be read; <see langword="null"/> where nothing is.</summary>
    internal string? Fault { get; set; }

    internal string RawValue { get; set; } = "";

    internal long? Cost { get; set; }

    internal Quality Quality { get; private set; }

    /// <summary>Whether it states a quality of its own; else the type's holds.</summary>
    internal bool HasQuality { get; private set; }

    internal void AddQuality(string code)
    {
        Quality |= EspiCodes.QualityOf(code);
        HasQuality = true;
    }
}
