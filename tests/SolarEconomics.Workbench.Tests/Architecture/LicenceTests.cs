using System.Text.Json;

namespace SolarEconomics.Workbench.Tests;

public class LicenceTests
{
    [Fact]
    public void Every_package_that_a_layer_brings_is_listed_with_its_licence()
    {
        var listed = File.ReadLines(Repository.File("src", "LICENCES.md"))
            .Where(line => line.StartsWith("| ", StringComparison.Ordinal)).Select(line => line.Split('|')[1].Trim()).ToHashSet(StringComparer.OrdinalIgnoreCase);
        Assert.Empty(Restored().Where(name => !listed.Contains(name)).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void No_package_is_listed_that_nothing_brings()
    {
        var restored = Restored().ToHashSet(StringComparer.OrdinalIgnoreCase);
        var section = File.ReadLines(Repository.File("src", "LICENCES.md")).TakeWhile(line => !line.StartsWith("## Bundled", StringComparison.Ordinal));
        var listed = section.Where(line => line.StartsWith("| ", StringComparison.Ordinal)).Select(line => line.Split('|')[1].Trim()).Where(name => name is not ("package" or "---"));
        Assert.Empty(listed.Where(name => !restored.Contains(name)));
    }

    /// <summary>The packages in the restored graph of the top layer, which holds all others.</summary>
    private static IEnumerable<string> Restored()
    {
        using var assets = JsonDocument.Parse(File.ReadAllText(Repository.File("src", "SolarEconomics.Workbench", "obj", "project.assets.json")));
        return [.. assets.RootElement.GetProperty("libraries").EnumerateObject()
            .Where(l => l.Value.GetProperty("type").GetString() == "package").Select(l => l.Name.Split('/')[0]).Where(n => n != "Meziantou.Analyzer")];
    }
}
