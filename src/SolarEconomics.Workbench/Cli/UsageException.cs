namespace SolarEconomics.Workbench;

/// <summary>What was typed cannot be meant; the work has not started.</summary>
internal sealed class UsageException(string message) : Exception(message);
