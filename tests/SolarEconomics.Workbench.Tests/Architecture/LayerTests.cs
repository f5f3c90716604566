using System.Reflection;
using System.Xml.Linq;

namespace SolarEconomics.Workbench.Tests;

public class LayerTests
{
    [Theory]
    [InlineData("SolarEconomics")]
    [InlineData("SolarEconomics.Charts", "SolarEconomics")]
    [InlineData("SolarEconomics.Files", "SolarEconomics")]
    [InlineData("SolarEconomics.Solvers", "SolarEconomics")]
    [InlineData("SolarEconomics.Notebook", "SolarEconomics", "SolarEconomics.Charts", "SolarEconomics.Files", "SolarEconomics.Solvers")]
    [InlineData("SolarEconomics.Workbench", "SolarEconomics", "SolarEconomics.Charts", "SolarEconomics.Files", "SolarEconomics.Solvers", "SolarEconomics.Notebook")]
    public void A_layer_references_only_the_layers_below_it(string layer, params string[] below) =>
        Assert.Empty(Assembly.Load(layer).GetReferencedAssemblies().Select(r => r.Name!)
            .Where(name => name.StartsWith("SolarEconomics", StringComparison.Ordinal)).Except(below));

    // The compiler drops references that nothing uses, so the project files are checked too.
    [Theory]
    [InlineData("SolarEconomics")]
    [InlineData("SolarEconomics.Charts", "SolarEconomics")]
    [InlineData("SolarEconomics.Files", "SolarEconomics")]
    [InlineData("SolarEconomics.Solvers", "SolarEconomics")]
    [InlineData("SolarEconomics.Notebook", "SolarEconomics", "SolarEconomics.Charts", "SolarEconomics.Files", "SolarEconomics.Solvers")]
    [InlineData("SolarEconomics.Workbench", "SolarEconomics", "SolarEconomics.Charts", "SolarEconomics.Files", "SolarEconomics.Solvers", "SolarEconomics.Notebook")]
    public void A_project_file_names_only_the_layers_below_it(string layer, params string[] below) =>
        Assert.Empty(Items(layer, "ProjectReference").Select(p => Path.GetFileNameWithoutExtension(p.Replace('\\', '/'))).Except(below));

    [Fact]
    public void The_domain_knows_no_plotting_kernel_or_web()
    {
        string[] refused = ["Plotly", "Microsoft.DotNet.Interactive", "Microsoft.AspNetCore", "Playwright", "NetMQ", "OrTools", "MiniExcel", "Parquet"];
        var references = Assembly.Load("SolarEconomics").GetReferencedAssemblies().Select(r => r.Name!).Concat(Items("SolarEconomics", "PackageReference"));
        Assert.Empty(references.Where(name => refused.Any(r => name.StartsWith(r, StringComparison.Ordinal))));
    }

    [Fact]
    public void Only_the_engine_folder_names_the_notebook_engine()
    {
        var engine = Repository.File("src", "SolarEconomics.Notebook", "Engine") + Path.DirectorySeparatorChar;
        var elsewhere = Repository.Sources("src", "*.cs")
            .Where(path => !path.StartsWith(engine, StringComparison.Ordinal))
            .Where(path => File.ReadLines(path).Any(line => line.Contains("Microsoft.DotNet.Interactive", StringComparison.Ordinal)
                && !line.TrimStart().StartsWith("//", StringComparison.Ordinal)));
        Assert.Empty(elsewhere.Select(path => Path.GetRelativePath(Repository.Root, path)));
    }

    [Fact]
    public void Every_public_type_of_the_domain_is_in_the_one_namespace_that_users_import() =>
        Assert.Empty(Assembly.Load("SolarEconomics").GetExportedTypes().Where(t => t.Namespace != "SolarEconomics").Select(t => t.FullName));

    private static IEnumerable<string> Items(string project, string kind) =>
        XDocument.Load(Repository.File("src", project, project + ".csproj")).Descendants(kind).Select(e => (string)e.Attribute("Include")!);
}
