using System.Text.Json.Nodes;

namespace SolarEconomics.Benchmarks;

/// <summary>Notebooks made for a measurement, in a folder of their own.</summary>
internal static class MadeNotebook
{
    /// <summary>Writes a notebook of code steps, each under a heading of its own, with an output where one is given.</summary>
    internal static string Write(string name, IEnumerable<(string Code, JsonNode? Output)> steps)
    {
        var cells = new JsonArray();
        foreach (var (code, output) in steps)
        {
            var number = (cells.Count / 2) + 1;
            cells.Add(new JsonObject { ["cell_type"] = "markdown", ["id"] = $"text-{number}", ["metadata"] = new JsonObject(), ["source"] = $"## Question {number}\n\nSome words about it." });
            cells.Add(new JsonObject
            {
                ["cell_type"] = "code", ["execution_count"] = null, ["id"] = $"step-{number}", ["metadata"] = new JsonObject(),
                ["outputs"] = output is null ? new JsonArray() : new JsonArray(output.DeepClone()), ["source"] = code,
            });
        }
        var folder = Directory.CreateDirectory(Places.Made(Path.Combine("page", "notebooks"))).FullName;
        var path = Path.Combine(folder, name + ".ipynb");
        // A program that was ended in the run before left a journal: it would be offered instead of answers.
        foreach (var journal in Directory.EnumerateFiles(folder, $".{name}*.journal*")) File.Delete(journal);
        File.WriteAllText(path, new JsonObject { ["cells"] = cells, ["metadata"] = new JsonObject(), ["nbformat"] = 4, ["nbformat_minor"] = 5 }.ToJsonString());
        return path;
    }

    /// <summary>The first chart of notebook 01, as it is saved.</summary>
    internal static JsonNode Chart()
    {
        var notebook = JsonNode.Parse(File.ReadAllText(Path.Combine(Places.Root, "notebooks", "01-has-it-paid-for-itself.ipynb")))!;
        return notebook["cells"]!.AsArray().SelectMany(cell => cell!["outputs"]?.AsArray() ?? []).First(output => output!["data"]?["application/vnd.plotly.v1+json"] is not null)!;
    }
}
