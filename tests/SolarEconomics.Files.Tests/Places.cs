namespace SolarEconomics.Files.Tests;

/// <summary>A temporary folder that goes with the test, and the samples of the repository.</summary>
internal sealed class Places : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("files-").FullName;

    static Places() => FileFormats.Register();

    internal string At(string name) => Path.Combine(_folder, name);

    internal string Write(string name, byte[] bytes)
    {
        File.WriteAllBytes(At(name), bytes);
        return At(name);
    }

    internal static string Sample(string name)
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "SolarEconomics.sln"))) folder = Path.GetDirectoryName(folder)!;
        return Path.Combine(folder, "tests", "data", "readings", name);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
