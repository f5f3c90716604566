using System.Text;

namespace SolarEconomics.Notebook;

/// <summary>A file beside a notebook that holds what was changed since the notebook was saved, on the disk within a moment of each change.</summary>
/// <remarks>Only one program writes it; it is locked while that program lives. Not thread-safe.</remarks>
public sealed class NotebookJournal : IDisposable
{
    private readonly string notebook;
    private FileStream? file;
    private NotebookState last;
    private bool isEmpty = true;

    /// <summary>A journal for a notebook; its file appears with the first change.</summary>
    /// <param name="notebook">Path of the notebook.</param>
    /// <param name="saved">The notebook as its file has it.</param>
    public NotebookJournal(string notebook, NotebookState saved)
    {
        ArgumentNullException.ThrowIfNull(notebook);
        ArgumentNullException.ThrowIfNull(saved);
        (this.notebook, last) = (notebook, saved);
    }

    /// <summary>Writes what is different since the last time; returns once it is on the disk.</summary>
    /// <param name="now">The notebook as it is.</param>
    /// <param name="at">When.</param>
    /// <exception cref="IOException">The disk is full.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written.</exception>
    public void Append(NotebookState now, DateTimeOffset at)
    {
        ArgumentNullException.ThrowIfNull(now);
        if (now.IsSameAs(last)) return;
        var line = JournalLine.Between(last, now, at);
        file ??= Create();
        var before = isEmpty ? 0 : file.Position;
        try
        {
            file.Write(Encoding.UTF8.GetBytes(isEmpty ? JournalLine.First(Path.GetFileName(notebook)) + line : line));
            file.Flush(flushToDisk: true);
        }
        catch (IOException)
        {
            // Half a line would hide those that come after it.
            file.SetLength(before);
            file.Position = before;
            throw;
        }
        (isEmpty, last) = (false, now);
    }

    /// <summary>The notebook's own file holds everything now: the journal begins anew.</summary>
    /// <param name="saved">The notebook as it was saved.</param>
    public void Empty(NotebookState saved)
    {
        ArgumentNullException.ThrowIfNull(saved);
        last = saved;
        if (file is null || isEmpty) return;
        file.SetLength(0);
        file.Position = 0;
        isEmpty = true;
    }

    /// <summary>Ends; a journal with nothing in it that is not saved is removed.</summary>
    public void Dispose()
    {
        if (file is not { } open) return;
        open.Dispose();
        if (isEmpty) File.Delete(open.Name);
        file = null;
    }

    /// <summary>The first name that nobody has taken: another program may have the same notebook open, or have left a journal behind.</summary>
    private FileStream Create()
    {
        for (var number = 1; ; number++)
        {
            var path = JournalName.Of(notebook, number);
            if (File.Exists(path)) continue;
            try
            {
                return new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.None, bufferSize: 0);
            }
            catch (IOException) when (File.Exists(path))
            {
                // Another program was quicker; the next name is ours.
            }
        }
    }
}
