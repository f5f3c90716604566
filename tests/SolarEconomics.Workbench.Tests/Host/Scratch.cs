using System.Text.Json.Nodes;

namespace SolarEconomics.Workbench.Tests;

/// <summary>A folder of its own with a <c>notebooks/</c> in it, gone at the end of the test.</summary>
internal sealed class Scratch : IDisposable
{
    public Scratch()
    {
        Folder = Directory.CreateTempSubdirectory("workbench-test-").FullName;
        Directory.CreateDirectory(Path.Combine(Folder, "notebooks"));
    }

    public string Folder { get; }

    /// <summary>The folder that stands in for the user's own, where a notebook of this scratch is opened.</summary>
    public static StateFolder StateBeside(string notebook) => new(Path.Combine(Path.GetDirectoryName(Path.GetDirectoryName(notebook))!, "state"));

    /// <summary>Writes a notebook of these steps: text starting with <c>#</c> is a text step, all else code.</summary>
    public string Notebook(string name, params string[] steps)
    {
        var document = NotebookOf(steps);
        var path = Path.Combine(Folder, "notebooks", name);
        File.WriteAllText(path, document.ToJsonString());
        return path;
    }

    private static JsonObject NotebookOf(string[] steps)
    {
        var cells = new JsonArray();
        for (var at = 0; at < steps.Length; at++)
        {
            var isText = steps[at].StartsWith('#');
            var cell = new JsonObject
            {
                ["cell_type"] = isText ? "markdown" : "code",
                ["id"] = FormattableString.Invariant($"step-{at + 1}"),
                ["metadata"] = new JsonObject(),
                ["source"] = steps[at],
            };
            if (!isText)
            {
                cell["execution_count"] = null;
                cell["outputs"] = new JsonArray();
            }
            cells.Add((JsonNode)cell);
        }
        return new() { ["cells"] = cells, ["metadata"] = new JsonObject(), ["nbformat"] = 4, ["nbformat_minor"] = 5 };
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
