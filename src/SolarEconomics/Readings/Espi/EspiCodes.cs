using System.Globalization;

namespace SolarEconomics;

/// <summary>The codes of ESPI: direction, unit, multiplier, quality, currency. Source: readings-espi.</summary>
internal static class EspiCodes
{
    private const double CostParts = 100_000;

    /// <summary>Direction: 1 delivered to the customer, 19 received from the customer; net (4) and none (0) belong to no flow.</summary>
    internal static FlowKind FlowOf(string? code) => code switch
    {
        "1" => FlowKind.Import,
        "19" => FlowKind.Export,
        _ => FlowKind.Unknown,
    };

    internal static string DirectionName(string? code) => code switch
    {
        "0" => "none",
        "1" => "import",
        "4" => "net",
        "19" => "export",
        _ => "readings",
    };

    /// <summary>8 estimated from a reference day, 9 interpolated, 12 projected: estimated. 10 questionable, 13 mixed: doubtful.</summary>
    internal static Quality QualityOf(string code) => code.Trim() switch
    {
        "8" or "9" or "12" => Quality.Estimated,
        "10" or "13" => Quality.Doubtful,
        _ => Quality.Good,
    };

    /// <summary>What a quality code says, for messages.</summary>
    internal static string QualityWord(string code) => code.Trim() switch
    {
        "0" => "valid",
        "7" => "manually edited",
        "8" => "estimated from a reference day",
        "9" => "linear interpolation",
        "10" => "questionable",
        "11" => "derived",
        "12" => "projected",
        "13" => "mixed",
        "14" => "raw",
        "15" => "weather-normalised",
        "16" => "other",
        "17" => "validated",
        "18" => "verified",
        "19" => "revenue quality",
        _ => "unknown",
    };

    /// <summary>How values add up.</summary>
    internal static string AccumulationWord(string? code) => code switch
    {
        "1" => "bulk quantity",
        "2" => "continuous cumulative",
        "3" => "cumulative",
        "4" => "delta data",
        "9" => "summation",
        _ => "other",
    };

    /// <summary>Whether each value is the state of a register; else it is the amount of its own interval.</summary>
    internal static bool IsRegister(string? code) => code is "1" or "2" or "3" or "9";

    /// <summary>Unit of measure: 72 Wh, 38 W, 71 VAh, 73 VArh.</summary>
    internal static EnergyUnit? UnitOf(string? code) => code switch
    {
        "72" => EnergyUnit.Find("Wh"),
        "38" => EnergyUnit.Find("W"),
        "71" => EnergyUnit.Find("VAh"),
        "73" => EnergyUnit.Find("VArh"),
        _ => null,
    };

    /// <summary>Kilo-units of a raw number: raw × 10^multiplier ÷ 1000, by one exact power of ten so that it rounds once.</summary>
    internal static double Kilo(double raw, int multiplier) => multiplier <= 3 ? raw / Math.Pow(10, 3 - multiplier) : raw * Math.Pow(10, multiplier - 3);

    /// <summary>An amount of money from a cost in hundred-thousandths.</summary>
    internal static double Money(double raw) => raw / CostParts;

    /// <summary>Currency by its ISO 4217 number, for those in which such feeds are written.</summary>
    internal static Currency? CurrencyOf(string? number) => number switch
    {
        "840" => Currency.Of("USD"),
        "124" => Currency.Of("CAD"),
        "978" => Currency.Of("EUR"),
        "826" => Currency.Of("GBP"),
        "36" or "036" => Currency.Of("AUD"),
        _ => null,
    };

    /// <summary>Power of ten by which raw numbers are multiplied; 0 where it is left out.</summary>
    internal static int? Multiplier(IReadOnlyDictionary<string, string> fields)
    {
        if (!fields.TryGetValue("powerOfTenMultiplier", out var text)) return 0;
        return int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var power) && power is >= -12 and <= 9 ? power : null;
    }
}
