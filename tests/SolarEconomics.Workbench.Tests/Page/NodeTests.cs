using System.Diagnostics;

namespace SolarEconomics.Workbench.Tests;

/// <summary>The page's modules, tested by node's own test runner.</summary>
public class NodeTests
{
    [NeedsFact("node", "--version", "apt-get install nodejs")]
    public async Task The_page_modules_pass_their_own_tests()
    {
        var folder = Path.Combine(Sources.Root, "tests", "web");
        using var node = Process.Start(new ProcessStartInfo("node", ["--test", "--test-reporter=tap", .. Directory.GetFiles(folder, "*.test.js")])
        {
            WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false,
        })!;
        var output = await node.StandardOutput.ReadToEndAsync();
        await node.WaitForExitAsync();
        Assert.True(node.ExitCode == 0, output);
        Assert.DoesNotContain("# tests 0", output, StringComparison.Ordinal);
    }
}
