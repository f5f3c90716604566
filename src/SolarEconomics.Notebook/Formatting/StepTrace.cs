using System.Diagnostics;
using System.Globalization;

namespace SolarEconomics.Notebook;

/// <summary>The places in the reader's steps through which an exception came, innermost first.</summary>
internal static class StepTrace
{
    internal static IReadOnlyList<string> LinesOf(Exception exception) =>
    [
        .. new StackTrace(exception, fNeedFileInfo: true).GetFrames()
            .Where(IsFromStep)
            .Select(Say)
            .Distinct(StringComparer.Ordinal),
    ];

    // Only code of a step is compiled in memory and still knows its lines.
    private static bool IsFromStep(StackFrame frame) =>
        frame.GetFileLineNumber() > 0 && frame.GetMethod()?.Module.Assembly is { Location.Length: 0 };

    private static string Say(StackFrame frame)
    {
        var place = Path.GetFileName(frame.GetFileName()) is { Length: > 0 } name ? name : "this step";
        return string.Create(CultureInfo.InvariantCulture, $"{place}, line {frame.GetFileLineNumber()}");
    }
}
