using System.Text.Json.Nodes;

namespace SolarEconomics.Notebook;

public sealed partial class NotebookDocument
{
    private const string LeftOut = "left out";

    /// <summary>Whether the file is saved without outputs and run numbers, so that working out again changes no line of it. Kept in the notebook itself. Default: answers are saved.</summary>
    public bool LeavesAnswersOut
    {
        get => OwnText("answers") == LeftOut;
        set
        {
            if (value) SetOwn("answers", LeftOut);
            else if (root["metadata"]?["solareconomics"] is JsonObject own && own.Remove("answers"))
            {
                frame = null;
                Touch();
            }
        }
    }

    /// <summary>The notebook as its file has it once it is saved: without its answers, where they are left out.</summary>
    public NotebookState FileState() =>
        LeavesAnswersOut ? State().With([.. steps.Select(step => step.Kind == StepKind.Code ? StepText.Of(WithoutAnswer(step.Cell)) : step.Text)]) : State();

    /// <summary>A copy of a cell; its outputs, which may be very long, are not copied first.</summary>
    private static JsonObject WithoutAnswer(JsonObject cell) => new(cell.Select(field => KeyValuePair.Create(field.Key, field.Key switch
    {
        "outputs" => new JsonArray(),
        "execution_count" => null,
        _ => field.Value?.DeepClone(),
    })));
}
