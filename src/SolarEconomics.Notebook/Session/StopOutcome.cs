namespace SolarEconomics.Notebook;

/// <summary>How a stop ended.</summary>
public enum StopOutcome
{
    /// <summary>Nothing was being worked out.</summary>
    NothingToStop,

    /// <summary>The step stopped; variables of earlier steps are still there.</summary>
    Stopped,

    /// <summary>The step did not stop in time; its process was replaced and all variables are gone.</summary>
    Replaced,
}
