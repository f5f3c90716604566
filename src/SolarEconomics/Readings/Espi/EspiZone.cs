using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>The clock that an ESPI feed states by its local time parameters: an offset, and one rule each for the start and end of daylight saving.</summary>
/// <remarks>A rule is a number of 32 bits, high to low: month (4), kind of day (3), day of month (5), day of week with Monday 1 (3), hour (5), second of the hour (12).
/// Source: readings-espi.</remarks>
internal static class EspiZone
{
    internal static DateTimeZone? Of(EspiEntry parameters, ProblemList problems)
    {
        var fields = parameters.Fields;
        if (!TrySeconds(fields, "tzOffset", out var standard) || !TrySeconds(fields, "dstOffset", out var saving))
        {
            var field = TrySeconds(fields, "tzOffset", out _) ? "dstOffset" : "tzOffset";
            problems.Doubtful(parameters.LineOf(field), 0, fields[field], "local time parameters that cannot be read", "tzOffset and dstOffset in seconds; local days are counted in UTC");
            return null;
        }
        var start = SeasonRule.Of(fields.GetValueOrDefault("dstStartRule"));
        var end = SeasonRule.Of(fields.GetValueOrDefault("dstEndRule"));
        if (saving == 0 || start is null || end is null) return DateTimeZone.ForOffset(Offset.FromSeconds(standard));
        return new SeasonZone(Offset.FromSeconds(standard), Offset.FromSeconds(saving), start.Value, end.Value);
    }

    private static bool TrySeconds(IReadOnlyDictionary<string, string> fields, string name, out int seconds)
    {
        seconds = 0;
        return !fields.TryGetValue(name, out var text)
            || (int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out seconds) && Math.Abs(seconds) <= 14 * 3600);
    }
}
