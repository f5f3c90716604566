using System.Globalization;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <content>What the pages are shown.</content>
internal sealed partial class OpenNotebook
{
    private readonly Dictionary<string, (string Code, CodeNames Names)> names = new(StringComparer.Ordinal);
    private IReadOnlyList<(string Id, CodeNames Names)> dependenceOf = [];
    private Dependence? dependence;

    private NotebookView View()
    {
        var shown = shownInstead ?? document;
        return new(
            shown.Title ?? Path.GetFileNameWithoutExtension(keeper.Path), Path.GetFileName(keeper.Path),
            [.. shown.Steps.Where(step => step.Kind != StepKind.Other).Select(step => shownInstead is null ? View(step) : View(step, new StepWork { State = FirstState(step) }))],
            shownInstead is null ? AssumptionViews.Of(document) : [], Work(), session, saved, mayRun, document.LeavesAnswersOut, offers.TryPeek(out var offer) ? (offer with { IsShown = IsLookingElsewhere }).View() : null);
    }

    private IReadOnlyList<VersionView> VersionViews() =>
        [.. keeper.Versions.All.Select(entry => new VersionView(entry.Name, TimeZoneInfo.ConvertTime(entry.At, time.LocalTimeZone).ToString("ddd d MMM, HH:mm", CultureInfo.InvariantCulture)))];

    private StepView View(NotebookStep step) => View(step, works[step.Id]);

    private static StepView View(NotebookStep step, StepWork work)
    {
        var isText = step.Kind == StepKind.Text;
        var answers = isText ? [] : Answers.Of(step.Outputs);
        if (work.StoppedBecause.Length > 0) answers = [.. answers, new ProblemAnswer(work.StoppedBecause, "", "")];
        return new StepView(
            step.Id, isText ? "text" : "code", (isText ? step.Heading : FirstComment(step.Source)) ?? "", step.Source,
            isText ? Prose.WithoutHeading(step.Source) : "", work.State.ToString().ToLowerInvariant(), step.Source.Split('\n').Length, work.Seconds, answers, work.Asks, work.Hidden, work.Preview);
    }

    private Dependence Dependence()
    {
        var codes = document.Steps.Where(step => step.Kind == StepKind.Code).Select(step => (step.Id, NamesOf(step))).ToList();
        // One run asks three times; only another text, order or step makes it another one.
        if (dependence is null || !dependenceOf.SequenceEqual(codes)) (dependence, dependenceOf) = (new Dependence(codes), codes);
        return dependence;
    }

    private CodeNames NamesOf(NotebookStep step)
    {
        var code = step.Source;
        if (names.TryGetValue(step.Id, out var known) && known.Code == code) return known.Names;
        var read = CodeNames.Of(code);
        names[step.Id] = (code, read);
        return read;
    }

    private static string? FirstComment(string code)
    {
        var first = code.Split('\n').FirstOrDefault(line => line.Trim().Length > 0)?.Trim() ?? "";
        return first.StartsWith("//", StringComparison.Ordinal) ? first.TrimStart('/').Trim() : null;
    }

    /// <summary>The state of a step that was read from a file: nothing is worked out on opening.</summary>
    private static StepState FirstState(NotebookStep step) => step.Outputs switch
    {
        [.., var last] when (string?)last["output_type"] == "error" => StepState.Failed,
        { Count: > 0 } => StepState.Kept,
        _ => step.RunNumber is null ? StepState.None : StepState.Kept,
    };
}
