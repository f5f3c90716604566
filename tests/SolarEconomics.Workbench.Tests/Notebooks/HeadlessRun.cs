using System.Diagnostics;
using System.Text.Json.Nodes;

namespace SolarEconomics.Workbench.Tests;

/// <summary>A notebook worked out by the command line, as a user or a script runs it.</summary>
internal sealed record HeadlessRun(int ExitCode, string Said, JsonNode? Saved)
{
    internal static async Task<HeadlessRun> Of(string notebook, params string[] more)
    {
        var saved = Path.Combine(Path.GetTempPath(), $"worked-out-{Guid.NewGuid():N}.ipynb");
        try
        {
            using var process = Process.Start(new ProcessStartInfo("dotnet",
                [Path.Combine(AppContext.BaseDirectory, "SolarEconomics.Workbench.dll"), "run", Repository.File("notebooks", notebook), "--save", saved, .. more])
            {
                RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false,
            })!;
            var output = process.StandardOutput.ReadToEndAsync();
            var error = process.StandardError.ReadToEndAsync();
            await process.WaitForExitAsync().WaitAsync(TimeSpan.FromMinutes(3));
            return new HeadlessRun(process.ExitCode, await output + await error, File.Exists(saved) ? JsonNode.Parse(await File.ReadAllTextAsync(saved)) : null);
        }
        finally
        {
            File.Delete(saved);
        }
    }

    /// <summary>The plain text of the last result of a step, by its id.</summary>
    internal string Answer(string stepId)
    {
        var step = Saved!["cells"]!.AsArray().Single(c => (string)c!["id"]! == stepId)!;
        var text = step["outputs"]!.AsArray().Last()!["data"]!["text/plain"]!;
        return text is JsonArray lines ? string.Concat(lines.Select(l => (string)l!)) : (string)text!;
    }

    /// <summary>How many steps drew a chart.</summary>
    internal int Charts => Saved!["cells"]!.AsArray().Sum(c => c!["outputs"]?.AsArray().Count(o => o!["data"]?["application/vnd.plotly.v1+json"] is not null) ?? 0);
}
