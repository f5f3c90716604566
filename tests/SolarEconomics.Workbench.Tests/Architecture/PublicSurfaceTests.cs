using System.Reflection;
using PublicApiGenerator;

namespace SolarEconomics.Workbench.Tests;

public class PublicSurfaceTests
{
    /// <summary>What a layer shows to its users, as a text file that a reviewer reads: a line removed is a break.</summary>
    [Theory]
    [InlineData("SolarEconomics")]
    [InlineData("SolarEconomics.Charts")]
    [InlineData("SolarEconomics.Files")]
    [InlineData("SolarEconomics.Solvers")]
    [InlineData("SolarEconomics.Notebook")]
    public void Public_surface_is_the_approved_one(string layer)
    {
        var options = new ApiGeneratorOptions { IncludeAssemblyAttributes = false };
        var received = Assembly.Load(layer).GeneratePublicApi(options).ReplaceLineEndings("\n") + "\n";
        var approved = Repository.File("tests", "SolarEconomics.Workbench.Tests", "Architecture", "Surface", layer + ".txt");
        var expected = File.Exists(approved) ? File.ReadAllText(approved).ReplaceLineEndings("\n") : "";
        if (received == expected) return;
        var left = Path.ChangeExtension(approved, ".received.txt");
        Directory.CreateDirectory(Path.GetDirectoryName(left)!);
        File.WriteAllText(left, received);
        var pair = expected.Split('\n').Zip(received.Split('\n')).FirstOrDefault(p => p.First != p.Second);
        Assert.Fail($"{layer}: the public surface changed. First line that differs:\n- {pair.First}\n+ {pair.Second}\n" +
            $"If it is meant, copy {left} over {approved} and say so in src/CHANGELOG.md (BREAKING where a line went).");
    }
}
