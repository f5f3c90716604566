namespace SolarEconomics;

/// <summary>Names of columns in a frame: a channel's own, with what it would not say by itself.</summary>
internal static class FrameNames
{
    private const string NoEnergyBegin = " [no energy: ";
    private const string Energy = " [energy in kWh]";
    private const string End = " [end]";

    internal static string Of(string name, Channel channel) =>
        !channel.IsEnergy ? $"{name}{NoEnergyBegin}{channel.Unit}]" : IsReadAsEnergy(name) ? name : name + Energy;

    internal static string EndOf(string name) => name + End;

    /// <summary>Whether a column holds the ends of another.</summary>
    internal static bool IsEnd(string name, Func<string, bool> isColumn) => name.EndsWith(End, StringComparison.Ordinal) && isColumn(name[..^End.Length]);

    /// <summary>The meaning of a column's name; what <see cref="Of"/> added comes off again.</summary>
    internal static ColumnMeaning MeaningOf(string name, int number, ReadOptions options)
    {
        if (name.EndsWith(']') && name.LastIndexOf(NoEnergyBegin, StringComparison.Ordinal) is >= 0 and var at)
        {
            var unit = name[(at + NoEnergyBegin.Length)..^1];
            return new ColumnMeaning(WithUnit(name[..at], unit), FlowKind.Unknown, unit, ColumnKind.Energy, $"column {number} \"{name}\" is kept and counted nowhere because its name says {unit}") { Number = number };
        }
        if (!name.EndsWith(Energy, StringComparison.Ordinal)) return HeaderWords.Understand(name, number, null, options.UnitWhereNone ?? "kWh");
        var own = name[..^Energy.Length];
        return HeaderWords.Understand(own, number, "kWh", null, "its name") with { Header = WithUnit(own, "kWh"), Kind = ColumnKind.Energy };
    }

    /// <summary>A header from whose end a channel's name takes off nothing but this unit.</summary>
    private static string WithUnit(string name, string unit) => $"{name} ({unit})";

    private static bool IsReadAsEnergy(string name) =>
        HeaderWords.Understand(name, 1, null, "kWh") is { Kind: ColumnKind.Energy, Unit: "kWh" } && !name.EndsWith(End, StringComparison.Ordinal) && new ValueColumn(0, HeaderWords.Understand(name, 1, null, "kWh")).Name == name;
}
