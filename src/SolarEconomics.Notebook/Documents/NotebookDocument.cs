using System.Text;
using System.Text.Json.Nodes;

namespace SolarEconomics.Notebook;

/// <summary>A notebook file (.ipynb, nbformat 4.5): its steps, in order, and everything that other programs keep in it.</summary>
/// <remarks>Fields and kinds of cell that are not known here survive reading and saving. Not thread-safe: change it from one thread at a time.</remarks>
public sealed partial class NotebookDocument
{
    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    private readonly JsonObject root;
    private readonly List<NotebookStep> steps;

    private NotebookDocument(JsonObject root)
    {
        this.root = root;
        steps = [.. Cells.Select(c => new NotebookStep((JsonObject)c!))];
    }

    /// <summary>The steps in reading order.</summary>
    public IReadOnlyList<NotebookStep> Steps => steps;

    /// <summary>Whether something was changed since it was read or saved.</summary>
    public bool IsChanged { get; private set; }

    /// <summary>Name of the culture in which results are written, for example <c>en-IE</c>. Default: <c>en-IE</c>.</summary>
    public string Culture
    {
        get => OwnText("culture") ?? NotebookCulture.DefaultName;
        set => SetOwn("culture", NotebookCulture.Named(value).Name);
    }

    /// <summary>Version of the library that last worked this notebook out or saved it; <see langword="null"/> where none is written.</summary>
    public string? LibraryVersion => OwnText("library");

    /// <summary>The first heading of the notebook: the question that it answers; <see langword="null"/> where there is none.</summary>
    public string? Title => steps.Select(s => s.Heading).FirstOrDefault(h => h is not null);

    private JsonArray Cells => (JsonArray)root["cells"]!;

    /// <summary>An empty notebook.</summary>
    public static NotebookDocument New() => new(new JsonObject
    {
        ["cells"] = new JsonArray(),
        ["metadata"] = new JsonObject
        {
            ["kernelspec"] = new JsonObject { ["display_name"] = "SolarEconomics (C#)", ["language"] = "C#", ["name"] = "solareconomics" },
            ["language_info"] = new JsonObject { ["file_extension"] = ".cs", ["mimetype"] = "text/x-csharp", ["name"] = "C#" },
        },
        ["nbformat"] = 4,
        ["nbformat_minor"] = 5,
    });

    /// <summary>Reads a notebook file.</summary>
    /// <param name="path">Path of the file.</param>
    /// <exception cref="FileNotFoundException">No such file.</exception>
    /// <exception cref="NotebookFormatException">The file is not a notebook; the message says where and why.</exception>
    public static NotebookDocument Load(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (!File.Exists(path)) throw Throw.NoNotebook(path);
        try
        {
            // Strict: a letter that cannot be read would otherwise be replaced, and saved so.
            var bytes = File.ReadAllBytes(path);
            return Parse(StrictUtf8.GetString(bytes.AsSpan().StartsWith("\ufeff"u8) ? bytes.AsSpan(3) : bytes), path);
        }
        catch (DecoderFallbackException e)
        {
            throw Throw.NotUtf8(path, e);
        }
    }

    /// <summary>Reads a notebook from its text.</summary>
    /// <param name="text">The JSON text.</param>
    /// <param name="name">Name for messages.</param>
    /// <exception cref="NotebookFormatException">The text is not a notebook; the message says where and why.</exception>
    public static NotebookDocument Parse(string text, string name = "notebook")
    {
        ArgumentNullException.ThrowIfNull(text);
        return new(DocumentReader.Read(text, name));
    }

    /// <summary>The file's text: one space per level, source as lists of lines, a line end at the end.</summary>
    public string ToJson() => State().ToJson();

    /// <summary>Saves so that a crash leaves the old file or the new one, never half of one; without answers where <see cref="LeavesAnswersOut"/> says so.</summary>
    /// <param name="path">Path of the file; its folder exists.</param>
    /// <exception cref="IOException">The disk is full or the file is in use.</exception>
    /// <exception cref="UnauthorizedAccessException">File or folder may not be written.</exception>
    public void Save(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (IsChanged) SetOwn("library", Library.Version);
        AtomicFile.Write(path, Encoding.UTF8.GetBytes(FileState().ToJson()));
        IsChanged = false;
    }

    private string? OwnText(string key) =>
        root["metadata"] is JsonObject metadata && metadata["solareconomics"] is JsonObject own
        && own[key] is JsonValue value && value.TryGetValue<string>(out var text) ? text : null;

    private void SetOwn(string key, string value)
    {
        if (string.Equals(OwnText(key), value, StringComparison.Ordinal)) return;
        if (root["metadata"] is not JsonObject metadata) root["metadata"] = metadata = new JsonObject();
        if (metadata["solareconomics"] is not JsonObject own) metadata["solareconomics"] = own = new JsonObject();
        DocumentReader.SetInOrder(own, key, value);
        frame = null;
        Touch();
    }
}
