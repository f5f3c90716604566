namespace SolarEconomics.Workbench;

/// <content>Which step made the values that the session holds, and what an answer rests on that reading from the top would not tell.</content>
internal sealed partial class OpenNotebook
{
    private readonly Dictionary<string, string> makers = new(StringComparer.Ordinal);

    private void RememberMaker(string id)
    {
        foreach (var (step, names) in Dependence().Steps)
        {
            if (step != id) continue;
            foreach (var name in names.Defines) makers[name] = id;
        }
    }

    /// <summary>What a step uses that was made below it, or by a step that is gone: said beside its answer.</summary>
    private string HiddenFor(string id)
    {
        var dependence = Dependence();
        var place = dependence.Steps.Select(step => step.Id).ToList();
        var names = dependence.Steps.FirstOrDefault(step => step.Id == id).Names;
        if (names is null) return "";
        var hidden = names.Uses.Where(name => dependence.DefinerOf(name, id) is null && makers.ContainsKey(name) && makers[name] != id).Order(StringComparer.Ordinal).ToList();
        var below = hidden.Where(name => place.Contains(makers[name], StringComparer.Ordinal)).ToList();
        var gone = hidden.Except(below, StringComparer.Ordinal).ToList();
        return string.Join(' ', new[]
        {
            below.Count > 0 ? $"This answer rests on {Listed(below)} from a step further down: worked out from the top, it would fail. Move that step up." : "",
            gone.Count > 0 ? $"This answer rests on {Listed(gone)} from a step or a text that is gone: worked out from the top, it would fail." : "",
        }.Where(words => words.Length > 0));
    }

    /// <summary>A step's text goes, but what it changed in place stays changed in the session: those values are made again before they are used.</summary>
    private void MakeAgainWhatItChanged(string id)
    {
        if (!works.TryGetValue(id, out var work) || !work.HasRun) return;
        foreach (var maker in Dependence().Renewers(id)) works[maker].CodeInSession = null;
    }

    private static string Listed(IReadOnlyList<string> names) => string.Join(", ", names);
}
