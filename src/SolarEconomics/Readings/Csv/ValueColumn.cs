namespace SolarEconomics;

/// <summary>A column whose numbers become a channel.</summary>
/// <param name="index">Field in the row, counted from 0.</param>
/// <param name="meaning">How it is understood.</param>
internal sealed class ValueColumn(int index, ColumnMeaning meaning)
{
    private readonly EnergyUnit? _unit = EnergyUnit.Find(meaning.Unit);

    internal int Index => index;

    internal ColumnMeaning Meaning => meaning;

    internal bool IsSeries => meaning.Kind is ColumnKind.Energy or ColumnKind.Net or ColumnKind.Power or ColumnKind.Counter or ColumnKind.DailyCounter;

    /// <summary>Whether the numbers are energy whose unit is known, so that they may be added up.</summary>
    internal bool IsEnergy => _unit is { IsActiveEnergy: true };

    /// <summary>Whether the numbers are power, in one direction or in both.</summary>
    internal bool IsPower => meaning.Kind == ColumnKind.Power || (meaning.Kind == ColumnKind.Net && _unit is { IsPower: true });

    /// <summary>Whether no unit is known at all; a reactive one is known and no energy.</summary>
    internal bool HasNoUnit => _unit is null;

    internal string UnitName => _unit?.Name ?? "unknown";

    /// <summary>Name of the channel: the header without its unit.</summary>
    internal string Name { get; } = NameOf(index, meaning);

    /// <summary>kWh, or kW for power; the number as it stands where the unit is unknown.</summary>
    internal double Scale(double number) => _unit is null ? number : _unit.Scale(number);

    /// <summary>Whether a cell may state its number in a unit: one of the same kind as the column's.</summary>
    internal bool TakesUnit(EnergyUnit unit) => _unit is not null && unit.IsPower == _unit.IsPower && unit.IsActiveEnergy && _unit.IsActiveEnergy && unit.ToKilo > 0 && _unit.ToKilo > 0;

    /// <summary>A number in the column's own unit from one in another.</summary>
    internal double FromUnit(double number, EnergyUnit unit) => unit == _unit ? number : unit.Scale(number) / _unit!.Scale(1);

    private static string NameOf(int index, ColumnMeaning meaning)
    {
        var name = meaning.Header.Trim();
        if (name.Length == 0) return FormattableString.Invariant($"column {index + 1}");
        foreach (var bracketed in new[] { $"({meaning.Unit})", $"[{meaning.Unit}]" })
            if (meaning.Unit.Length > 0 && name.EndsWith(bracketed, StringComparison.OrdinalIgnoreCase))
                return name[..^bracketed.Length].Trim() is { Length: > 0 } bare ? bare : name;
        return name;
    }
}
