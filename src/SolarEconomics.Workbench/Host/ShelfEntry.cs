namespace SolarEconomics.Workbench;

/// <summary>One notebook on offer.</summary>
/// <param name="Name">Its name relative to the room.</param>
/// <param name="Question">The question it answers: its first heading, or the file's name.</param>
/// <param name="About">The first paragraph under the heading; empty where there is none.</param>
/// <param name="Problem">Why it cannot be read, in words; empty when it can.</param>
internal sealed record ShelfEntry(string Name, string Question, string About, string Problem);
