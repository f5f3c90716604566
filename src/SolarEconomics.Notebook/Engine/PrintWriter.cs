using System.Diagnostics.CodeAnalysis;
using System.Text;

namespace SolarEconomics.Notebook;

/// <summary>Stands in for the console while a step runs.</summary>
internal sealed class PrintWriter(PrintBuffer buffer, string stream) : TextWriter
{
    public override Encoding Encoding => Encoding.UTF8;

    [AllowNull]
    public override string NewLine
    {
        get => "\n";
        set => throw new NotSupportedException();
    }

    public override void Write(char value) => buffer.Add(stream, [value]);

    public override void Write(char[] chars, int index, int count) => buffer.Add(stream, chars.AsSpan(index, count));

    public override void Write(ReadOnlySpan<char> chars) => buffer.Add(stream, chars);

    public override void Write(string? value) => buffer.Add(stream, value);

    public override void WriteLine(string? value) => buffer.Add(stream, value + "\n");
}
