using System.Text;

namespace SolarEconomics.Files;

/// <summary>A table on its way into text form: a temporary file, deleted when done with, so that a long table does not fill memory.</summary>
internal sealed class TableText : IDisposable
{
    private readonly string _path = Path.Combine(Path.GetTempPath(), "SolarEconomics-" + Path.GetRandomFileName() + ".csv");
    private readonly StreamWriter _writer;

    internal TableText() => _writer = new StreamWriter(_path, append: false, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), bufferSize: 1 << 16);

    /// <summary>Rows so far; each is one line, so that a line of the text is a row of the table.</summary>
    internal int Rows { get; private set; }

    internal void Write(IEnumerable<string> cells)
    {
        var first = true;
        foreach (var cell in cells)
        {
            if (!first) _writer.Write(',');
            first = false;
            Write(cell);
        }
        _writer.Write('\n');
        Rows++;
    }

    /// <summary>The table as a file of records, to be read like any table in text form. Not to be written to any more.</summary>
    internal RecordFile AsRecord(RecordFile source, string name)
    {
        _writer.Dispose();
        return RecordFile.Converted(source.Path, name, _path);
    }

    public void Dispose()
    {
        _writer.Dispose();
        File.Delete(_path);
    }

    private void Write(string cell)
    {
        // A mark of numbers in front would make the line a comment; an error in a cell begins so.
        if (cell.AsSpan().IndexOfAny("\",\r\n") < 0 && !cell.StartsWith('#'))
        {
            _writer.Write(cell);
            return;
        }
        _writer.Write('"');
        foreach (var letter in cell)
        {
            // A line break inside a cell would end the row; nothing that is counted holds one.
            if (letter == '"') _writer.Write("\"\"");
            else _writer.Write(letter is '\r' or '\n' ? ' ' : letter);
        }
        _writer.Write('"');
    }
}
