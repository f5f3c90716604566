using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Finds a clock by what people write: an IANA name, or a fixed offset from UTC.</summary>
public static class Zones
{
    /// <summary>The clock of a name.</summary>
    /// <param name="text">An IANA name such as <c>Europe/Dublin</c>, or a fixed offset such as <c>+10:00</c> or <c>UTC+10</c>.</param>
    /// <exception cref="UnknownNameException">No such zone; the message names the nearest.</exception>
    public static DateTimeZone Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return FixedOffset(text) ?? Require.Zone(text);
    }

    private static DateTimeZone? FixedOffset(string text)
    {
        var rest = text.AsSpan().Trim();
        if (rest.StartsWith("UTC", StringComparison.OrdinalIgnoreCase)) rest = rest[3..];
        if (rest.IsEmpty || rest[0] is not ('+' or '-')) return null;
        var sign = rest[0] == '-' ? -1 : 1;
        rest = rest[1..];
        var colon = rest.IndexOf(':');
        var hoursText = colon < 0 ? rest : rest[..colon];
        var minutesText = colon < 0 ? default : rest[(colon + 1)..];
        if (!int.TryParse(hoursText, NumberStyles.None, CultureInfo.InvariantCulture, out var hours) || hours > 18) return null;
        var minutes = 0;
        if (colon >= 0 && (!int.TryParse(minutesText, NumberStyles.None, CultureInfo.InvariantCulture, out minutes) || minutes > 59)) return null;
        var total = sign * ((hours * 60) + minutes);
        return Math.Abs(total) > 18 * 60 ? null : DateTimeZone.ForOffset(Offset.FromSeconds(total * 60));
    }
}
