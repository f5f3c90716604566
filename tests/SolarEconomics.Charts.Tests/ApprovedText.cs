namespace SolarEconomics.Charts.Tests;

/// <summary>Compares with an approved text beside the tests. Where they differ, the new text is left beside it and the first differing line is told.</summary>
internal static class ApprovedText
{
    private static string Folder => Path.Combine(Artifacts.Root, "tests", "SolarEconomics.Charts.Tests", "Approved");

    internal static void Match(string name, string text)
    {
        var file = Path.Combine(Folder, name);
        var received = file + ".received.txt";
        var approved = File.Exists(file) ? File.ReadAllText(file).ReplaceLineEndings("\n") : "";
        if (approved == text)
        {
            File.Delete(received);
            return;
        }

        File.WriteAllText(received, text);
        var (old, now) = (approved.Split('\n'), text.Split('\n'));
        var line = Enumerable.Range(0, Math.Max(old.Length, now.Length)).First(i => At(old, i) != At(now, i));
        Assert.Fail($"{name}, line {line + 1}: approved {At(old, line) ?? "nothing"}, received {At(now, line) ?? "nothing"}. " +
            $"Look at {received}; if it is right, move it to {file}.");
    }

    private static string? At(string[] lines, int i) => i < lines.Length ? lines[i] : null;
}
