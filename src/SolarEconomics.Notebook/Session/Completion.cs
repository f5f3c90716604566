namespace SolarEconomics.Notebook;

/// <summary>One way to go on typing.</summary>
/// <param name="Text">What is shown and put in.</param>
/// <param name="Kind">What it is: Class, Method, Property, Local, Keyword …</param>
public sealed record Completion(string Text, string Kind);
