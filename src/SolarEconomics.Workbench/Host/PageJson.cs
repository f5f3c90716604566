using System.Text.Json;
using System.Text.Json.Serialization;

namespace SolarEconomics.Workbench;

/// <summary>How records are written for the page; written ahead of time, so that the first answer is quick.</summary>
[JsonSourceGenerationOptions(JsonSerializerDefaults.Web)]
[JsonSerializable(typeof(IReadOnlyList<ShelfEntry>))]
internal sealed partial class PageJson : JsonSerializerContext;
