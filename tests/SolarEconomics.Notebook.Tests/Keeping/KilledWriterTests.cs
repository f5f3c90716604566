using System.Diagnostics;
using System.Globalization;

namespace SolarEconomics.Notebook.Tests;

/// <summary>A program that writes a notebook and its journal is killed two hundred times, at random moments.</summary>
public sealed class KilledWriterTests
{
    private const int Kills = 200;

    [Fact]
    public void After_two_hundred_kills_the_notebook_opens_whole_and_nothing_that_was_kept_is_missing()
    {
        using var folder = new TemporaryFolder();
        var path = folder.File("killed.ipynb");
        var document = NotebookDocument.New();
        document.Insert(0, StepKind.Code, "var count = 0;");
        File.WriteAllText(path, document.ToJson().Replace(document.Steps[0].Id, "count", StringComparison.Ordinal));
        var random = new Random(20261125);
        var journals = 0;
        for (var kill = 0; kill < Kills; kill++)
        {
            var kept = WriteUntilKilled(path, random);
            // The file itself is whole, whenever the kill came.
            var opened = NotebookDocument.Load(path);
            var left = LeftJournal.Beside(path, opened.State());
            if (left.Count > 0)
            {
                journals++;
                opened.Return(Assert.Single(left).State);
            }
            var found = RestlessWriter.NumberIn(opened);
            // What was said to be on the disk is there; at most the one change at work is there beyond it.
            Assert.InRange(found, kept, kept + 1);
            opened.Save(path);
            foreach (var one in left) one.Delete();
            foreach (var half in Directory.GetFiles(folder.Path, ".*.tmp")) File.Delete(half);
        }
        // Both ways must really have been taken: killed with a journal and just after a save.
        Assert.InRange(journals, Kills / 4, Kills);
    }

    /// <summary>Starts the program, kills it after a random while, and says which change it had said to be on the disk last.</summary>
    private static int WriteUntilKilled(string path, Random random)
    {
        using var program = Process.Start(new ProcessStartInfo("dotnet", [typeof(ChildMain).Assembly.Location, RestlessWriter.Name, path]) { RedirectStandardOutput = true, UseShellExecute = false })!;
        // From the first change on, so that each kill hits a program at work, however slow the machine is.
        var said = program.StandardOutput.ReadLine() ?? throw new InvalidOperationException("The writing program ended by itself.");
        Thread.Sleep(random.Next(0, 40));
        program.Kill();
        while (program.StandardOutput.ReadLine() is { } line)
        {
            // A last line that was cut off by the kill is no statement.
            if (int.TryParse(line, CultureInfo.InvariantCulture, out var number) && number > int.Parse(said, CultureInfo.InvariantCulture) && line.Length >= said.Length) said = line;
        }
        program.WaitForExit();
        return int.Parse(said, CultureInfo.InvariantCulture);
    }
}
