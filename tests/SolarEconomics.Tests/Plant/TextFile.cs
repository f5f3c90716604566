using System.Text;

namespace SolarEconomics.Tests.PlantRoom;

/// <summary>A file with a given text, for as long as a test needs it.</summary>
internal sealed class TextFile : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("plant-").FullName;

    internal TextFile(string text) => File.WriteAllText(Path, text, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));

    internal string Path => System.IO.Path.Combine(_folder, "plant.json");

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
