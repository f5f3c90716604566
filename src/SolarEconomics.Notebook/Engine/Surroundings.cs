using System.Globalization;

namespace SolarEconomics.Notebook;

/// <summary>What a step finds around it while it runs: console, culture, and who hears how far long work is. Put back when it ends.</summary>
/// <remarks>The console belongs to the whole process, so a process runs one session.</remarks>
internal sealed class Surroundings : IDisposable
{
    private readonly TextWriter output = Console.Out;
    private readonly TextWriter error = Console.Error;
    private readonly TextReader input = Console.In;
    private readonly CultureInfo culture = CultureInfo.CurrentCulture;
    private readonly IDisposable progress;

    internal Surroundings(TextWriter output, TextWriter error, TextReader input, CultureInfo culture, IProgress<double> progress)
    {
        Console.SetOut(output);
        Console.SetError(error);
        Console.SetIn(input);
        CultureInfo.CurrentCulture = culture;
        this.progress = WorkProgress.Around(progress);
    }

    public void Dispose()
    {
        progress.Dispose();
        Console.SetOut(output);
        Console.SetError(error);
        Console.SetIn(input);
        CultureInfo.CurrentCulture = culture;
    }
}
