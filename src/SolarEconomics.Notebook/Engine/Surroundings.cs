using System.Globalization;

namespace SolarEconomics.Notebook;

/// <summary>What a step finds around it while it runs: console, culture, and who hears how far long work is and stops it. Put back when it ends.</summary>
/// <remarks>The console belongs to the whole process, so a process runs one session.</remarks>
internal sealed class Surroundings : IDisposable
{
    private readonly TextWriter output = Console.Out;
    private readonly TextWriter error = Console.Error;
    private readonly TextReader input = Console.In;
    private readonly CultureInfo culture = CultureInfo.CurrentCulture;
    private readonly IDisposable listening;

    internal Surroundings(TextWriter output, TextWriter error, TextReader input, CultureInfo culture, WorkListener listener)
    {
        Console.SetOut(output);
        Console.SetError(error);
        Console.SetIn(input);
        CultureInfo.CurrentCulture = culture;
        listening = WorkProgress.Around(listener);
    }

    public void Dispose()
    {
        listening.Dispose();
        Console.SetOut(output);
        Console.SetError(error);
        Console.SetIn(input);
        CultureInfo.CurrentCulture = culture;
    }
}
