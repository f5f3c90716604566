using System.Text.Json.Nodes;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench.Tests;

/// <summary>Notebooks in which values of the file are of another kind than they should be: what opens can be shown.</summary>
public class DamagedNotebookTests
{
    private const int PerSample = 300;

    public static TheoryData<string, int> Samples()
    {
        var samples = new TheoryData<string, int>();
        foreach (var (file, at) in Directory.EnumerateFiles(Repository.File("notebooks"), "*.ipynb").Order(StringComparer.Ordinal).Select((file, at) => (file, at))) samples.Add(Path.GetFileName(file), at + 1);
        return samples;
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void What_opens_of_a_damaged_notebook_can_be_shown(string name, int seed)
    {
        var random = new Random(seed);
        var original = File.ReadAllText(Repository.File("notebooks", name));
        var shown = 0;
        for (var i = 0; i < PerSample; i++)
        {
            var root = JsonNode.Parse(original)!;
            for (var damages = random.Next(1, 4); damages > 0; damages--) Damage(root, random);
            NotebookDocument document;
            try
            {
                document = NotebookDocument.Parse(root.ToJsonString(), name);
            }
            catch (NotebookFormatException refused)
            {
                Assert.StartsWith(name, refused.Message, StringComparison.Ordinal);
                continue;
            }
            foreach (var step in document.Steps) _ = (Answers.Of(step.Outputs), Prose.WithoutHeading(step.Kind == StepKind.Text ? step.Source : ""));
            _ = (CodeHash.Of(document), AssumptionViews.Of(document));
            shown++;
        }
        Assert.InRange(shown, 1, PerSample);
    }

    /// <summary>Walks down at random and puts a value of another kind in the place where it ends.</summary>
    private static void Damage(JsonNode root, Random random)
    {
        var at = root;
        while (true)
        {
            var inner = at switch { JsonObject fields => fields.Select(field => field.Value).ToList(), JsonArray list => [.. list], _ => [] };
            if (inner.Count == 0) return;
            var next = random.Next(inner.Count);
            if (inner[next] is JsonObject or JsonArray && random.Next(4) > 0) { at = inner[next]!; continue; }
            JsonNode? other = random.Next(6) switch { 0 => null, 1 => 7, 2 => "words", 3 => new JsonArray(), 4 => new JsonObject(), _ => true };
            if (at is JsonObject there) there[there.ElementAt(next).Key] = other;
            else ((JsonArray)at)[next] = other;
            return;
        }
    }
}
