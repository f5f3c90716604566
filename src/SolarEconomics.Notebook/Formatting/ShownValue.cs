using System.Text.Json.Nodes;

namespace SolarEconomics.Notebook;

/// <summary>A value ready to be shown: its forms by MIME type, and what a client may want to know beside them.</summary>
internal sealed record ShownValue(JsonObject Data, JsonObject Metadata)
{
    internal static ShownValue Plain(string text) => new(new JsonObject { ["text/plain"] = MultilineText.Write(text) }, []);

    internal static ShownValue Html(string html, string text) =>
        new(new JsonObject { ["text/html"] = MultilineText.Write(html), ["text/plain"] = MultilineText.Write(text) }, []);
}
