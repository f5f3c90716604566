namespace SolarEconomics.Files;

/// <summary>Says of what was found in the text of a sheet in which cell it stands.</summary>
internal static class CellProblems
{
    internal static IReadOnlyList<Problem> Of(IReadOnlyList<Problem> problems) => [.. problems.Select(Named)];

    internal static RecordException Of(RecordException refusal) =>
        refusal.Reason is { } reason ? new RecordException(Named(reason), Of(refusal.Problems)) : refusal;

    private static Problem Named(Problem problem)
    {
        if (problem.Line == 0 || problem.Column == 0) return problem;
        var cell = "in cell " + SheetCell.NameOf(problem.Column - 1, problem.Line);
        if (problem.Raw.StartsWith('='))
            return problem with { Found = $"a formula without a saved value {cell}", Expected = "its value. Open the workbook in the program that works it out, save it there, and read it again; the cell counts as missing" };
        return problem with { Found = $"{problem.Found} {cell}" };
    }
}
