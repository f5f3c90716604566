using NodaTime;

namespace AlderWeir;

/// <summary>The invented history of the plant: what happened on which day.</summary>
internal static class Timeline
{
    internal static readonly LocalDate Start = new(2022, 3, 1);
    internal static readonly LocalDate End = new(2025, 3, 1);

    internal static readonly LocalDate SouthOn = Start;
    internal static readonly LocalDate BatteryOn = new(2022, 4, 14);
    internal static readonly LocalDate WestOn = new(2022, 4, 20);
    internal static readonly LocalDate GroundOn = new(2022, 9, 10);

    /// <summary>The ground array's logger kept nothing in its first five months.</summary>
    internal static readonly LocalDate GroundLogged = new(2023, 2, 10);

    /// <summary>The first inverter of the west roof failed, and another took its place three weeks later.</summary>
    internal static readonly LocalDate WestFailed = new(2023, 6, 5);
    internal static readonly LocalDate WestReplaced = new(2023, 6, 27);

    /// <summary>A string of six modules went from the west roof to the ground array, whose controller lost its counter that day.</summary>
    internal static readonly LocalDate StringMoved = new(2023, 8, 19);

    /// <summary>The isolator of one of the two strings of the south roof was left open, unnoticed for eleven days.</summary>
    internal static readonly LocalDate IsolatorOpened = new(2024, 5, 3);
    internal static readonly LocalDate IsolatorClosed = new(2024, 5, 14);

    /// <summary>From this day the evening-peak tariff is in force.</summary>
    internal static readonly LocalDate NewTariff = new(2024, 3, 1);
}
