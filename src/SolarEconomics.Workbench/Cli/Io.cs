namespace SolarEconomics.Workbench;

/// <summary>Where a verb prints and from whom it hears that it should stop; tests read what was printed.</summary>
/// <param name="Out">Answers: what another program may read.</param>
/// <param name="Error">Messages to the person.</param>
/// <param name="IsTerminal">Whether a person watches, so that progress may overwrite itself.</param>
internal sealed record Io(TextWriter Out, TextWriter Error, bool IsTerminal)
{
    /// <summary>The folder that relative names on the command line start from.</summary>
    public string Folder { get; init; } = Environment.CurrentDirectory;

    public static Io Terminal() => new(Console.Out, Console.Error, !Console.IsErrorRedirected);
}
