namespace SolarEconomics;

/// <summary>One field of a table with its place, for messages.</summary>
/// <param name="Line">Line in the file, counted from 1.</param>
/// <param name="Column">Field in the line, counted from 1.</param>
/// <param name="Raw">Its text.</param>
internal readonly record struct Cell(int Line, int Column, string Raw);
