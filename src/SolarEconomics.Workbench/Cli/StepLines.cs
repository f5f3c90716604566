using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>Progress for a file or a pipe: one line per step that has ended.</summary>
internal sealed class StepLines(TextWriter to) : IProgress<RunProgress>
{
    public void Report(RunProgress value)
    {
        if (value.Ended is { } ended) to.WriteLine(FormattableString.Invariant($"{value.Number} of {value.Count}  {value.Name}  {ended.Took.TotalSeconds:F1} s"));
    }
}
