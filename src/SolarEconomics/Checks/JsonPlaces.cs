using System.Text;
using System.Text.Json;

namespace SolarEconomics;

/// <summary>Where each value of a JSON text stands: JSON pointer → line and column, both counted from 1.</summary>
internal sealed class JsonPlaces
{
    private readonly Dictionary<string, (int Line, int Column)> _places = new(StringComparer.Ordinal);
    private readonly List<string> _twice = [];

    /// <summary>Reads the places of a text that <see cref="JsonDocument"/> accepted.</summary>
    internal JsonPlaces(byte[] utf8)
    {
        var reader = new Utf8JsonReader(utf8, new JsonReaderOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true });
        var lines = new LineCounter(utf8);
        reader.Read();
        Value(ref reader, "", lines, lines.At((int)reader.TokenStartIndex));
    }

    /// <summary>Pointers of fields that stand twice in one object.</summary>
    internal IReadOnlyList<string> Twice => _twice;

    /// <summary>The place of a value; of a field, where its name starts. The place of its nearest parent where it does not exist.</summary>
    internal (int Line, int Column) Of(string pointer)
    {
        for (var at = pointer; ; at = at[..Math.Max(0, at.LastIndexOf('/'))])
        {
            if (_places.TryGetValue(at, out var place)) return place;
            if (at.Length == 0) return (0, 0);
        }
    }

    private void Value(ref Utf8JsonReader reader, string pointer, LineCounter lines, (int Line, int Column) place)
    {
        if (!_places.TryAdd(pointer, place)) _twice.Add(pointer);
        if (reader.TokenType == JsonTokenType.StartObject)
        {
            while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
            {
                var name = lines.At((int)reader.TokenStartIndex);
                var child = pointer + "/" + Escape(reader.GetString()!);
                reader.Read();
                Value(ref reader, child, lines, name);
            }
        }
        else if (reader.TokenType == JsonTokenType.StartArray)
        {
            for (var i = 0; reader.Read() && reader.TokenType != JsonTokenType.EndArray; i++)
                Value(ref reader, FormattableString.Invariant($"{pointer}/{i}"), lines, lines.At((int)reader.TokenStartIndex));
        }
    }

    internal static string Escape(string name) =>
        name.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal);

    /// <summary>Counts lines forward only, so that a whole file costs one pass.</summary>
    private sealed class LineCounter(byte[] utf8)
    {
        private int _at;
        private int _line = 1;
        private int _lineStart;

        internal (int Line, int Column) At(int index)
        {
            for (; _at < index; _at++)
            {
                if (utf8[_at] != (byte)'\n') continue;
                _line++;
                _lineStart = _at + 1;
            }
            return (_line, Encoding.UTF8.GetCharCount(utf8, _lineStart, index - _lineStart) + 1);
        }
    }
}
