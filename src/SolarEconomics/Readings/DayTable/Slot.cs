namespace SolarEconomics;

/// <summary>A column of a table of days: one interval of every day.</summary>
/// <param name="Column">Field in the row, counted from 0.</param>
/// <param name="Minutes">Start of the interval since the beginning of the day, on its clock or in time passed. Unit: minutes.</param>
/// <param name="SecondPass">Whether it is the second of two columns for one time: the hour that the autumn clock shows twice.</param>
internal readonly record struct Slot(int Column, int Minutes, bool SecondPass);
