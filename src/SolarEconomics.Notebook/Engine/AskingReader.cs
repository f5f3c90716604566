namespace SolarEconomics.Notebook;

/// <summary>Stands in for the console's input while a step runs: each line is asked of the reader.</summary>
internal sealed class AskingReader(Func<string> ask) : TextReader
{
    private string rest = "";

    public override int Peek() => rest.Length > 0 ? rest[0] : -1;

    public override int Read()
    {
        if (rest.Length == 0) rest = ask() + "\n";
        var next = rest[0];
        rest = rest[1..];
        return next;
    }

    public override string ReadLine()
    {
        if (rest.Length == 0) return ask();
        var line = rest.TrimEnd('\n');
        rest = "";
        return line;
    }
}
