using System.Collections.Concurrent;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>The notebooks that are open, each once, however many pages look at it.</summary>
internal sealed class NotebookDesk(Shared shared) : IAsyncDisposable
{
    private readonly ConcurrentDictionary<string, Lazy<OpenNotebook>> open = new(StringComparer.Ordinal);

    /// <summary>The open notebook of a path; opened if it is not. What cannot be read is tried again the next time.</summary>
    /// <exception cref="NotebookFormatException">The file is not a notebook.</exception>
    public OpenNotebook At(string path)
    {
        var one = open.GetOrAdd(path, name => new Lazy<OpenNotebook>(() => new OpenNotebook(name, shared)));
        try { return one.Value; }
        catch
        {
            open.TryRemove(KeyValuePair.Create(path, one));
            throw;
        }
    }

    public async ValueTask DisposeAsync()
    {
        foreach (var one in open.Values.Where(one => one.IsValueCreated)) await one.Value.DisposeAsync();
    }
}
