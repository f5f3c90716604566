using System.Text;

namespace SolarEconomics.Tests;

/// <summary>Files for tests: the committed samples, and temporary ones that go with the test.</summary>
internal sealed class TestFiles : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("readings-").FullName;

    internal static string Sample(string name) => Path.Combine(Published.Root(), "tests", "data", "readings", name);

    internal static readonly string[] Samples =
        ["nem12-5min-solar-month.csv", "nem12-30min-quality-and-500.csv", "espi-hourly-march-2011.xml", "daily-solar-wind-load-2006-2017.csv"];

    internal string Write(string name, string text, Encoding? encoding = null)
    {
        var path = Path.Combine(_folder, name);
        File.WriteAllText(path, text, encoding ?? new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        return path;
    }

    internal string Write(string name, byte[] bytes)
    {
        var path = Path.Combine(_folder, name);
        File.WriteAllBytes(path, bytes);
        return path;
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
