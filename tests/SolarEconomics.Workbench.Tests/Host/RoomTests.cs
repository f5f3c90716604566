namespace SolarEconomics.Workbench.Tests;

/// <summary>What the page may open: notebooks inside the nearest folder that holds <c>notebooks/</c>.</summary>
public sealed class RoomTests : IDisposable
{
    private readonly Scratch scratch = new();

    [Fact]
    public void The_room_is_the_nearest_folder_that_holds_notebooks()
    {
        var notebook = scratch.Notebook("one.ipynb", "1");
        var inner = Directory.CreateDirectory(Path.Combine(scratch.Folder, "notebooks", "inner", "notebooks")).Parent!.FullName;
        Assert.Equal(Room.Around(scratch.Folder).Folder, Room.Around(notebook).Folder);
        Assert.EndsWith("inner", Room.Around(inner).Folder, StringComparison.Ordinal);
    }

    [Fact]
    public void A_notebook_in_the_room_is_found_by_its_name() =>
        Assert.Equal("notebooks/one.ipynb", Room.Around(scratch.Folder).NameOf(scratch.Notebook("one.ipynb", "1")));

    [Theory]
    [InlineData("../outside.ipynb")]
    [InlineData("notebooks/../../outside.ipynb")]
    [InlineData("/etc/passwd")]
    [InlineData("notebooks/none.ipynb")]
    [InlineData("notebooks")]
    [InlineData("")]
    [InlineData("a\0b.ipynb")]
    public void What_is_outside_or_no_notebook_is_not_found(string name)
    {
        var outside = Path.Combine(Path.GetDirectoryName(scratch.Folder)!, "outside.ipynb");
        File.WriteAllText(outside, "{}");
        try { Assert.Null(Room.Around(scratch.Folder).Find(name)); }
        finally { File.Delete(outside); }
    }

    [Fact]
    public void A_link_does_not_lead_out_of_the_room()
    {
        using var other = new Scratch();
        var secret = other.Notebook("secret.ipynb", "1");
        File.CreateSymbolicLink(Path.Combine(scratch.Folder, "notebooks", "link.ipynb"), secret);
        Directory.CreateSymbolicLink(Path.Combine(scratch.Folder, "notebooks", "folder"), Path.GetDirectoryName(secret)!);
        var room = Room.Around(scratch.Folder);
        Assert.Null(room.Find("notebooks/link.ipynb"));
        Assert.Null(room.Find("notebooks/folder/secret.ipynb"));
    }

    public void Dispose() => scratch.Dispose();
}
