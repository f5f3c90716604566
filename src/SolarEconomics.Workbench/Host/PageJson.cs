using System.Text.Json;
using System.Text.Json.Serialization;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>How records are written for the page; written ahead of time, so that the first answer is quick.</summary>
[JsonSourceGenerationOptions(JsonSerializerDefaults.Web, AllowOutOfOrderMetadataProperties = true)]
[JsonSerializable(typeof(IReadOnlyList<ShelfEntry>))]
[JsonSerializable(typeof(TablePage))]
[JsonSerializable(typeof(PageCommand))]
[JsonSerializable(typeof(PageEvent))]
internal sealed partial class PageJson : JsonSerializerContext;
