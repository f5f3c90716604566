using System.Globalization;

namespace SolarEconomics.Notebook;

/// <summary>What people call the steps of a notebook: the heading they stand under, and their number among the steps of code.</summary>
public static class StepNames
{
    /// <summary>Short name for messages: <c>step 4</c>.</summary>
    /// <param name="document">The notebook.</param>
    /// <param name="step">One of its steps of code.</param>
    public static string Place(NotebookDocument document, NotebookStep step)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(step);
        var number = document.Steps.Where(s => s.Kind == StepKind.Code).TakeWhile(s => s != step).Count() + 1;
        return "step " + number.ToString(CultureInfo.InvariantCulture);
    }

    /// <summary>Full name: <c>step 4, under "Has it paid for itself?"</c>.</summary>
    /// <param name="document">The notebook.</param>
    /// <param name="step">One of its steps of code.</param>
    public static string Full(NotebookDocument document, NotebookStep step)
    {
        var place = Place(document, step);
        var heading = document.Steps.TakeWhile(s => s != step).Select(s => s.Heading).LastOrDefault(h => h is not null);
        return heading is null ? place : $"{place}, under \"{heading}\"";
    }
}
