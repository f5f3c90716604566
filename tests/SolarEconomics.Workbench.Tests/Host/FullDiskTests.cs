using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench.Tests;

/// <summary>A disk that is really full: a small one of its own, in memory, mounted for the program alone.</summary>
public sealed class FullDiskTests : IDisposable
{
    private readonly Scratch scratch = new();

    [NeedsFact("unshare", "-rm true", "Linux with user namespaces (package util-linux)", canBeInstalled: false)]
    public async Task A_full_disk_is_said_in_words_the_old_file_stays_and_saving_goes_on_once_there_is_room()
    {
        var path = scratch.Notebook("full.ipynb", "# Full", "var a = 1;");
        var disk = Path.Combine(scratch.Folder, "disk");
        var onDisk = Path.Combine(disk, "full.ipynb");
        var script = $"mkdir {disk} && mount -t tmpfs -o size=200k disk {disk} && cp {path} {onDisk} && exec dotnet {RunningProgram.Dll} open {onDisk} --no-browser";
        await using var program = await RunningProgram.StartAsync("unshare", ["-rm", "sh", "-c", script], path, Scratch.StateBeside(path).Path);
        using var talk = await HostConversation.BeginAsync(program.Address);
        // The program's own view of the disk, seen from outside.
        var seen = $"/proc/{program.Id}/root{onDisk}";

        await talk.SayAsync(new EditStep("step-2", "// " + new string('x', 300_000)));
        var words = await SavedWords(talk, "Not saved");
        Assert.Equal($"Not saved: The disk that holds {disk} is full. Free some space; saving is tried again by itself.", words);
        Assert.Equal("var a = 1;", NotebookDocument.Load(seen)["step-2"].Source);

        await talk.SayAsync(new EditStep("step-2", "var a = 2;"));
        await SavedWords(talk, "Saved ");
        Assert.Equal("var a = 2;", NotebookDocument.Load(seen)["step-2"].Source);
        Assert.Empty(Directory.GetFiles(Path.GetDirectoryName(seen)!, ".*.tmp"));
    }

    private static async Task<string> SavedWords(HostConversation talk, string begin)
    {
        while (await talk.HearAsync().WaitAsync(TimeSpan.FromSeconds(60)) is { } told)
        {
            if ((string)told["message"]! == "saved" && (string)told["words"]! is var words && words.StartsWith(begin, StringComparison.Ordinal)) return words;
        }
        throw new InvalidOperationException("The program ended.");
    }

    public void Dispose() => scratch.Dispose();
}
