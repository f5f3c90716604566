namespace SolarEconomics.Notebook.Tests;

public sealed class EngineBoundaryTests
{
    [Fact]
    public void No_public_member_shows_a_type_of_the_engine() =>
        Assert.DoesNotContain("Microsoft.DotNet.Interactive", PublicApiGenerator.ApiGenerator.GeneratePublicApi(typeof(ISession).Assembly, new() { IncludeAssemblyAttributes = false }), StringComparison.Ordinal);
}
