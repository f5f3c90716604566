namespace SolarEconomics.Workbench;

/// <summary>What a function that a step declares uses and changes of what stands around it, whenever it is called.</summary>
internal sealed record FunctionNames(IReadOnlySet<string> Uses, IReadOnlySet<string> Changes);
