namespace SolarEconomics;

/// <summary>A further record and how much narrower the value's range would be with it.</summary>
/// <param name="Record">The record, in words.</param>
/// <param name="Narrower">By how much the width would shrink, found by adding the record and computing again; <see langword="null"/> where it gives the range its first upper end.</param>
public sealed record Narrowing(string Record, Money? Narrower);
