using System.Globalization;

namespace SolarEconomics.Notebook;

/// <summary>What a step finds around it while it runs: console and culture. Put back when it ends.</summary>
/// <remarks>The console belongs to the whole process, so a process runs one session.</remarks>
internal sealed class Surroundings : IDisposable
{
    private readonly TextWriter output = Console.Out;
    private readonly TextWriter error = Console.Error;
    private readonly TextReader input = Console.In;
    private readonly CultureInfo culture = CultureInfo.CurrentCulture;

    internal Surroundings(TextWriter output, TextWriter error, TextReader input, CultureInfo culture)
    {
        Console.SetOut(output);
        Console.SetError(error);
        Console.SetIn(input);
        CultureInfo.CurrentCulture = culture;
    }

    public void Dispose()
    {
        Console.SetOut(output);
        Console.SetError(error);
        Console.SetIn(input);
        CultureInfo.CurrentCulture = culture;
    }
}
