namespace SolarEconomics.Benchmarks;

/// <summary><c>readme</c>: writes the speed table of the README from the kept results.</summary>
internal static class ReadmeVerb
{
    internal static int Do()
    {
        var path = Path.Combine(Places.Root, "README.md");
        File.WriteAllText(path, ReadmeTables.Placed(File.ReadAllText(path), ReadmeTables.Of(Places.Results)));
        return 0;
    }
}
