using System.Text;

namespace SolarEconomics;

/// <summary>Finds the encoding of a text file, and the lines and fields of its head.</summary>
internal static class CsvText
{
    private static readonly Encoding Western = CodePagesEncodingProvider.Instance.GetEncoding(1252)!;

    /// <summary>The encoding by mark or by the pattern of zero bytes; UTF-8 where the bytes allow it, else Windows-1252, which is Latin-1 with letters in place of controls.</summary>
    internal static Encoding EncodingOf(ReadOnlySpan<byte> head)
    {
        if (head.StartsWith(new byte[] { 0xEF, 0xBB, 0xBF })) return new UTF8Encoding(encoderShouldEmitUTF8Identifier: true);
        if (head.StartsWith(new byte[] { 0xFF, 0xFE, 0, 0 })) return Encoding.UTF32;
        if (head.StartsWith(new byte[] { 0xFF, 0xFE })) return Encoding.Unicode;
        if (head.StartsWith(new byte[] { 0xFE, 0xFF })) return Encoding.BigEndianUnicode;
        var sample = head[..Math.Min(head.Length, 1024)];
        var (even, odd) = (0, 0);
        for (var i = 0; i < sample.Length; i++)
        {
            if (sample[i] != 0) continue;
            if (i % 2 == 0) even++;
            else odd++;
        }
        if (odd * 4 > sample.Length && even == 0) return Encoding.Unicode;
        if (even * 4 > sample.Length && odd == 0) return Encoding.BigEndianUnicode;
        return IsUtf8(head) ? new UTF8Encoding(encoderShouldEmitUTF8Identifier: false) : Western;
    }

    private static bool IsUtf8(ReadOnlySpan<byte> head)
    {
        while (!head.IsEmpty)
        {
            var status = Rune.DecodeFromUtf8(head, out _, out var taken);
            // The head may end in the middle of a letter.
            if (status == System.Buffers.OperationStatus.NeedMoreData) return true;
            if (status != System.Buffers.OperationStatus.Done) return false;
            head = head[taken..];
        }
        return true;
    }

    /// <summary>The lines of the head as text, every row on one of them; the last one is left out where the file goes on.</summary>
    /// <param name="file">The file.</param>
    /// <param name="encoding">Its encoding.</param>
    /// <param name="neverClosed">Told of a quotation mark that is never closed: line, field and the line itself.</param>
    internal static IReadOnlyList<string> HeadLines(RecordFile file, Encoding encoding, Action<int, int, string>? neverClosed = null)
    {
        var head = file.Head;
        var preamble = encoding.GetPreamble();
        if (head.StartsWith(preamble)) head = head[preamble.Length..];
        var text = encoding.GetString(head);
        var lines = text.Replace("\r\n", "\n", StringComparison.Ordinal).Split('\n', '\r').ToList();
        if (file.Length > file.Head.Length) lines.RemoveAt(lines.Count - 1);
        return text.Contains('"', StringComparison.Ordinal) ? Whole(lines, neverClosed) : lines;
    }

    private static List<string> Whole(List<string> lines, Action<int, int, string>? neverClosed)
    {
        var at = 0;
        var rows = new WholeRows(() => at < lines.Count ? lines[at++] : null, CsvSniff.Delimiters, CsvSniff.MayBeRow) { NeverClosed = neverClosed };
        var whole = new List<string>(lines.Count);
        while (rows.Next() is { } line) whole.Add(line);
        return whole;
    }

    /// <summary>The fields of one line, quotes resolved.</summary>
    internal static string[] Fields(string line, char delimiter)
    {
        if (!line.Contains('"', StringComparison.Ordinal)) return line.Split(delimiter);
        var fields = new List<string>();
        var field = new StringBuilder();
        var quoted = false;
        for (var i = 0; i < line.Length; i++)
        {
            var c = line[i];
            if (c == '"')
            {
                if (quoted && i + 1 < line.Length && line[i + 1] == '"') field.Append(line[++i]);
                else quoted = !quoted;
            }
            else if (c == delimiter && !quoted)
            {
                fields.Add(field.ToString());
                field.Clear();
            }
            else
            {
                field.Append(c);
            }
        }
        fields.Add(field.ToString());
        return [.. fields];
    }
}
