namespace SolarEconomics;

/// <summary>Columns that hold the intervals of a whole day.</summary>
/// <param name="Name">What their headers say beside the time or number; often nothing.</param>
/// <param name="StepMinutes">Length of an interval.</param>
/// <param name="Numbered">Whether headers are numbers, not times: on the days of clock changes numbers may count the time that passed.</param>
/// <param name="Slots">The columns, in the order of the file.</param>
internal sealed record SlotGroup(string Name, int StepMinutes, bool Numbered, IReadOnlyList<Slot> Slots)
{
    internal long StepMs => StepMinutes * 60_000L;

    internal int PerDay => 1440 / StepMinutes;
}
