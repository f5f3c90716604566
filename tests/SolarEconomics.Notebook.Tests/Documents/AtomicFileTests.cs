namespace SolarEconomics.Notebook.Tests;

public sealed class AtomicFileTests
{
    [Fact]
    public void A_file_is_replaced_and_nothing_else_is_left()
    {
        using var folder = new TemporaryFolder();
        AtomicFile.Write(folder.File("a.txt"), "one"u8);
        AtomicFile.Write(folder.File("a.txt"), "two"u8);
        Assert.Equal("two", File.ReadAllText(folder.File("a.txt")));
        Assert.Single(Directory.GetFileSystemEntries(folder.Path));
    }

    [Fact]
    public void Halves_that_killed_programs_left_are_removed_once_they_are_old()
    {
        using var folder = new TemporaryFolder();
        foreach (var name in new[] { ".a.txt.01234567.tmp", ".a.txt.89abcdef.tmp", ".b.txt.01234567.tmp" }) File.WriteAllText(folder.File(name), "half");
        File.SetLastWriteTimeUtc(folder.File(".a.txt.01234567.tmp"), DateTime.UtcNow.AddHours(-2));
        AtomicFile.RemoveHalves(folder.File("a.txt"));
        Assert.Equal([".a.txt.89abcdef.tmp", ".b.txt.01234567.tmp"], Directory.GetFiles(folder.Path).Select(Path.GetFileName).Order());
    }

    [Fact]
    public void A_read_only_file_is_refused_and_kept()
    {
        using var folder = new TemporaryFolder();
        var path = folder.File("a.txt");
        File.WriteAllText(path, "kept");
        File.SetAttributes(path, FileAttributes.ReadOnly);
        Assert.Contains("read-only", Assert.Throws<UnauthorizedAccessException>(() => AtomicFile.Write(path, "new"u8)).Message, StringComparison.Ordinal);
        Assert.Equal("kept", File.ReadAllText(path));
        File.SetAttributes(path, FileAttributes.Normal);
    }

    [Fact]
    public void A_link_stays_a_link_and_its_file_is_replaced()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.File("real.txt"), "old");
        File.CreateSymbolicLink(folder.File("link.txt"), folder.File("real.txt"));
        AtomicFile.Write(folder.File("link.txt"), "new"u8);
        Assert.NotNull(new FileInfo(folder.File("link.txt")).LinkTarget);
        Assert.Equal("new", File.ReadAllText(folder.File("real.txt")));
    }

    [Fact]
    public void A_folder_that_is_not_there_leaves_nothing_behind()
    {
        using var folder = new TemporaryFolder();
        Assert.Throws<DirectoryNotFoundException>(() => AtomicFile.Write(folder.File("none/a.txt"), "x"u8));
        Assert.Empty(Directory.GetFileSystemEntries(folder.Path));
    }
}
