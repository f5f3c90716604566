using System.Globalization;
using System.Text.RegularExpressions;

namespace SolarEconomics;

/// <summary>Times of day as energy plans write them: <c>15:00</c>, <c>15:00:00</c>, <c>T15:00</c>, <c>1500</c>, with or without an offset.</summary>
internal static partial class PlanTime
{
    private const int MinutesPerDay = 1440;

    /// <summary>Minute of the day, 0 to 1440; <see langword="null"/> where the text is no time.</summary>
    internal static int? Minute(string text)
    {
        var match = Form().Match(text);
        if (!match.Success) return null;
        var minute = (int.Parse(match.Groups["hour"].ValueSpan, CultureInfo.InvariantCulture) * 60) + int.Parse(match.Groups["minute"].ValueSpan, CultureInfo.InvariantCulture);
        return minute <= MinutesPerDay ? minute : null;
    }

    /// <summary>Hours from start to end. Equal ones are the whole day, and a last minute such as 20:59 stands for the end that follows it.</summary>
    internal static HourSpan Span(int from, int until)
    {
        if (until % 30 == 29) until++;
        (from, until) = (from % MinutesPerDay, until % MinutesPerDay);
        return from == until ? HourSpan.WholeDay : HourSpan.Parse(HourSpan.Clock(from) + "-" + HourSpan.Clock(until));
    }

    [GeneratedRegex("^T?(?<hour>[0-9]{1,2}):?(?<minute>[0-5][0-9])(:[0-5][0-9](\\.[0-9]+)?)?(Z|[+-][0-9]{2}:?[0-9]{2})?$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Form();
}
