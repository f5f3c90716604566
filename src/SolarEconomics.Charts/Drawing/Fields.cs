using System.Globalization;

namespace SolarEconomics.Charts;

/// <summary>Attributes of one part of a figure, by the names of plotly's own schema, written in the order they were given.</summary>
internal sealed class Fields : Dictionary<string, object?>
{
    internal Fields()
        : base(StringComparer.Ordinal)
    {
    }

    internal Fields(IEnumerable<KeyValuePair<string, object?>> others)
        : base(others, StringComparer.Ordinal)
    {
    }

    /// <summary>Money rounded to the smallest coin and energy to 10 Wh: a figure is the same on every machine.</summary>
    internal static double Round(double value) => Math.Round(value, 2, MidpointRounding.AwayFromZero) + 0.0;

    internal static double Round(Money money) => Round((double)money.Amount);

    internal static string Iso(NodaTime.LocalDate date) => date.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture);
}
