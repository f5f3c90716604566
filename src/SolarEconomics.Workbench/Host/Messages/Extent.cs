using System.Text.Json.Serialization;

namespace SolarEconomics.Workbench;

/// <summary>How much to work out.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<Extent>))]
internal enum Extent
{
    /// <summary>Every step, from the top, in a session that starts afresh.</summary>
    [JsonStringEnumMemberName("everything")]
    Everything,

    /// <summary>The steps that are out of date, and what they need.</summary>
    [JsonStringEnumMemberName("outOfDate")]
    OutOfDate,

    /// <summary>One step, and what it needs.</summary>
    [JsonStringEnumMemberName("step")]
    Step,

    /// <summary>Every step down to one.</summary>
    [JsonStringEnumMemberName("toHere")]
    ToHere,
}
