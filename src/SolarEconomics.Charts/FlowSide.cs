namespace SolarEconomics.Charts;

/// <summary>From which side a chart looks at the flows.</summary>
public enum FlowSide
{
    /// <summary>What the arrays could have made, by where it went.</summary>
    Generation,

    /// <summary>The wanted use, by what served it.</summary>
    Use,
}
