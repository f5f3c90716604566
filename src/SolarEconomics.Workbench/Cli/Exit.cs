namespace SolarEconomics.Workbench;

/// <summary>What the program's exit code means.</summary>
internal static class Exit
{
    public const int Fine = 0;

    /// <summary>It started, and the work failed.</summary>
    public const int Failed = 1;

    /// <summary>It did not start: wrong usage, or an input that is missing or cannot be read.</summary>
    public const int NotStarted = 2;
}
