namespace SolarEconomics;

/// <summary>Where a row's time stands and how it is written.</summary>
/// <param name="Index">Field of the date, or of date and time; counted from 0.</param>
/// <param name="Form">How it is written.</param>
internal sealed record StampColumns(int Index, StampForm Form)
{
    /// <summary>Field of the time of day where it stands apart; −1 where it does not.</summary>
    internal int TimeIndex { get; init; } = -1;

    /// <summary>Field of the interval's end; −1 where the row states one time only.</summary>
    internal int EndIndex { get; init; } = -1;

    /// <summary>Where parts of the time stand in columns of their own; <see langword="null"/> where they do not.</summary>
    internal TimeParts? Parts { get; init; }

    /// <summary>Day 0 of times that count days; days since 1970.</summary>
    internal int DayZero { get; init; }

    internal DateOrder Order { get; init; } = DateOrder.YearMonthDay;

    internal StampFineness Fineness { get; init; } = StampFineness.Time;

    internal StampEdge Edge { get; init; } = StampEdge.Start;

    /// <summary>Whether the edge was told by a day's last time, 24:00.</summary>
    internal bool SaysTwentyFour { get; init; }
}
