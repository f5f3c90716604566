namespace SolarEconomics.Notebook;

/// <summary>What an assumption is, and so how its value is written and shown.</summary>
public enum AssumptionKind
{
    /// <summary>A rate per year as a fraction; 0.05 is shown as <c>5.0 % a year</c>.</summary>
    Rate,

    /// <summary>A share as a fraction; 0.35 is shown as <c>35 %</c>.</summary>
    Share,

    /// <summary>Whole years.</summary>
    Years,

    /// <summary>A number in a unit of its own.</summary>
    Number,
}
