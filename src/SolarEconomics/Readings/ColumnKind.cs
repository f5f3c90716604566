namespace SolarEconomics;

/// <summary>What the numbers of a column are.</summary>
public enum ColumnKind
{
    /// <summary>Left out: text, a total of other columns, or something that is no energy.</summary>
    Ignored,

    /// <summary>The time of the row, or a part of it.</summary>
    Stamp,

    /// <summary>The end of the row's interval.</summary>
    StampEnd,

    /// <summary>Energy of the row's interval.</summary>
    Energy,

    /// <summary>Power: the interval's mean where rows are regular, a sample where they are not.</summary>
    Power,

    /// <summary>Energy or power of one register for both directions: values above zero go the way of the column's flow (import where it names none), those below zero the other way.</summary>
    Net,

    /// <summary>A counter's state at the row's time.</summary>
    Counter,

    /// <summary>A counter's state that begins at 0 again each day.</summary>
    DailyCounter,

    /// <summary>Words on the quality of another column's values, as <see cref="Readings.WriteCsv"/> writes them.</summary>
    QualityWords,

    /// <summary>1 where the plant could have made more than was counted.</summary>
    CensoredFlag,
}
