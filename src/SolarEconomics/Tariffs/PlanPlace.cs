using System.Text.Json;
using NodaTime;

namespace SolarEconomics;

/// <summary>The place of an energy plan, told by the first digit of the postcodes that it covers.</summary>
/// <remarks>Common practice, no source: the first digit of an Australian postcode names the state.</remarks>
internal static class PlanPlace
{
    private static readonly (string Digits, string State, string Zone)[] Places =
    [
        ("0", "NT", "Australia/Darwin"), ("12", "NSW", "Australia/Sydney"), ("38", "VIC", "Australia/Melbourne"), ("49", "QLD", "Australia/Brisbane"),
        ("5", "SA", "Australia/Adelaide"), ("6", "WA", "Australia/Perth"), ("7", "TAS", "Australia/Hobart"),
    ];

    /// <summary>The state's clock; <see langword="null"/> where the plan names no postcode or those of several states.</summary>
    internal static DateTimeZone? ZoneOf(JsonElement data) => Of(data) is { } place ? DateTimeZoneProviders.Tzdb[place.Zone] : null;

    /// <summary>The state's short name; <see langword="null"/> where the plan names no postcode or those of several states.</summary>
    internal static string? StateOf(JsonElement data) => Of(data)?.State;

    private static (string State, string Zone)? Of(JsonElement data)
    {
        if (!data.TryGetProperty("geography", out var geography) || geography.ValueKind != JsonValueKind.Object
            || !geography.TryGetProperty("includedPostcodes", out var codes) || codes.ValueKind != JsonValueKind.Array) return null;
        var found = codes.EnumerateArray().Select(c => c.ToString()).Where(c => c.Length == 4)
            .Select(c => Places.FirstOrDefault(p => p.Digits.Contains(c[0], StringComparison.Ordinal))).Distinct().ToList();
        return found.Count == 1 && found[0].State is not null ? (found[0].State, found[0].Zone) : null;
    }
}
