using System.Globalization;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>The assumptions of a notebook as the page shows them: with the unit as people write it and a step for the slider.</summary>
internal static class AssumptionViews
{
    public static IReadOnlyList<AssumptionView> Of(NotebookDocument document) => [.. NotebookAssumptions.Of(document).Items.Select(View)];

    /// <summary>The step that declares an assumption; null where none does.</summary>
    public static string? StepOf(NotebookDocument document, string name) => NotebookAssumptions.Of(document).Items.FirstOrDefault(one => one.Name == name)?.StepId;

    /// <summary>Gives an assumption another value; says what is wrong, with nothing changed, where it does not fit.</summary>
    public static string? Set(NotebookDocument document, string name, double value) =>
        NotebookAssumptions.Set(document, [KeyValuePair.Create(name, value.ToString("R", CultureInfo.InvariantCulture))]).FirstOrDefault();

    private static AssumptionView View(NotebookAssumption one)
    {
        var (unit, step) = one.Kind switch
        {
            AssumptionKind.Rate => ("% a year", 0.001),
            AssumptionKind.Share => ("%", 0.01),
            AssumptionKind.Years => ("years", 1),
            _ => (one.Unit, NiceStep(one.To - one.From)),
        };
        return new AssumptionView(one.Name, one.Label, one.Value, unit, one.From, one.To, step);
    }

    /// <summary>A power of ten that divides the range into a few hundred places.</summary>
    private static double NiceStep(double range) => range <= 0 ? 1 : Math.Pow(10, Math.Floor(Math.Log10(range)) - 2);
}
