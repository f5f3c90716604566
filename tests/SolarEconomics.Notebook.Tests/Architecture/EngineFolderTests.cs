namespace SolarEconomics.Notebook.Tests;

public sealed class EngineFolderTests
{
    [Fact]
    public void Only_the_folder_Engine_names_the_engine()
    {
        var source = Path.Combine(Root(), "src", "SolarEconomics.Notebook");
        var naming = Directory.GetFiles(source, "*.cs", SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(source, path).Replace('\\', '/'))
            .Where(name => !name.StartsWith("obj/", StringComparison.Ordinal) && !name.StartsWith("bin/", StringComparison.Ordinal))
            .Where(name => File.ReadAllText(Path.Combine(source, name)).Contains("Microsoft.DotNet.Interactive", StringComparison.Ordinal))
            .ToList();
        Assert.Contains("Engine/EngineKernel.cs", naming);
        Assert.All(naming, name => Assert.StartsWith("Engine/", name, StringComparison.Ordinal));
    }

    [Fact]
    public void No_public_member_shows_a_type_of_the_engine() =>
        Assert.DoesNotContain("Microsoft.DotNet.Interactive", PublicApiGenerator.ApiGenerator.GeneratePublicApi(typeof(ISession).Assembly, new() { IncludeAssemblyAttributes = false }), StringComparison.Ordinal);

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "SolarEconomics.sln"))) folder = folder.Parent;
        return folder.FullName;
    }
}
