using System.Globalization;

namespace SolarEconomics.Notebook;

/// <summary>One assumption that a notebook declares in its code.</summary>
/// <param name="Name">Name of its variable, by which it is set: <c>discountRate</c>.</param>
/// <param name="Label">Plain words for people: <c>Discount rate</c>.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Unit">Its unit, such as <c>fraction a year</c>, <c>years</c> or <c>EUR/kWh</c>.</param>
/// <param name="Value">Its value as the code has it: a rate is a fraction.</param>
/// <param name="From">Lowest value that makes sense.</param>
/// <param name="To">Highest value that makes sense.</param>
/// <param name="StepId">Name of the step that declares it.</param>
public sealed record NotebookAssumption(
    string Name, string Label, AssumptionKind Kind, string Unit, double Value, double From, double To, string StepId)
{
    /// <summary>The value as people read it: <c>5.0 % a year</c>.</summary>
    /// <param name="culture">How numbers are written.</param>
    public string Shown(CultureInfo culture) => Say(Value, culture);

    /// <summary>The range as people read it: <c>0.0 to 15.0 % a year</c>.</summary>
    /// <param name="culture">How numbers are written.</param>
    public string ShownRange(CultureInfo culture) => $"{Number(From, culture)} to {Say(To, culture)}";

    private string Say(double value, CultureInfo culture) => Number(value, culture) + Kind switch
    {
        AssumptionKind.Rate => " % a year",
        AssumptionKind.Share => " %",
        _ => " " + Unit,
    };

    private string Number(double value, CultureInfo culture) => Kind switch
    {
        AssumptionKind.Rate => (value * 100).ToString("0.0##", culture),
        AssumptionKind.Share => (value * 100).ToString("0.##", culture),
        _ => value.ToString("#,0.######", culture),
    };
}
