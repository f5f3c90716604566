using System.Globalization;

namespace SolarEconomics.Notebook;

/// <summary>Reads a value that a person typed for an assumption.</summary>
internal static class AssumptionText
{
    /// <summary>The number as C# text where it fits; else what is wrong with it.</summary>
    internal static (string? Literal, string? Problem) Read(NotebookAssumption assumption, string text)
    {
        var trimmed = text.Trim();
        var isFraction = assumption.Kind is AssumptionKind.Rate or AssumptionKind.Share;
        var isPercent = isFraction && trimmed.EndsWith('%');
        var digits = isPercent ? trimmed[..^1].TrimEnd() : trimmed;
        const NumberStyles Style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
        // Decimal, so that 5.1 % becomes 0.051 and not 0.050999….
        if (!decimal.TryParse(digits, Style, CultureInfo.InvariantCulture, out var number)) return (null, Throw.NotANumber(assumption, text));
        var value = isPercent ? number / 100 : number;
        if ((double)value < assumption.From || (double)value > assumption.To) return (null, Throw.OutOfRange(assumption, text));
        if (assumption.Kind == AssumptionKind.Years && value != decimal.Truncate(value)) return (null, Throw.NotWhole(assumption, text));
        var literal = value.ToString("0.############################", CultureInfo.InvariantCulture);
        return (literal, null);
    }
}
