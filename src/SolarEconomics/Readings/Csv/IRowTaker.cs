namespace SolarEconomics;

/// <summary>Takes the rows of a table one by one.</summary>
internal interface IRowTaker
{
    /// <summary>Takes one row.</summary>
    /// <param name="fields">Its fields, quotes resolved.</param>
    /// <param name="line">Its line in the file, counted from 1.</param>
    void Take(ReadOnlySpan<string> fields, int line);
}
