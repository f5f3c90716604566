namespace SolarEconomics;

/// <summary>How a column of a table is understood. A user corrects a guess in one line: <c>ColumnMeaning.Of("PV", FlowKind.Generation, "Wh")</c>.</summary>
/// <param name="Header">Header of the column, as the file writes it; case does not matter.</param>
/// <param name="Flow">Which way its energy goes.</param>
/// <param name="Unit">Unit of its numbers, for example <c>kWh</c>, <c>Wh</c> or <c>kW</c>; empty where the record names none.</param>
/// <param name="Kind">What its numbers are.</param>
/// <param name="Reason">Why it is read so, in a sentence.</param>
public sealed record ColumnMeaning(string Header, FlowKind Flow, string Unit, ColumnKind Kind, string Reason)
{
    /// <summary>The reason of every correction.</summary>
    internal const string ByUser = "the user says so";

    /// <summary>Place in the row, counted from 1; 0 in a correction by the user, which goes by header.</summary>
    public int Number { get; init; }

    /// <summary>Name of the device that the header names beside the flow, where it does.</summary>
    public string? Device { get; init; }

    /// <summary>Whether this correction is meant for a column of that header.</summary>
    internal bool Corrects(string header) => string.Equals(Header.Trim(), header.Trim(), StringComparison.OrdinalIgnoreCase);

    /// <summary>A correction by the user: energy per interval.</summary>
    /// <param name="header">Header of the column, as the file writes it; case does not matter.</param>
    /// <param name="flow">Which way its energy goes.</param>
    /// <param name="unit">Unit of its numbers.</param>
    /// <param name="kind">What its numbers are. Default: energy per interval, or power where the unit is one of power.</param>
    /// <exception cref="UnknownNameException">The unit is none of energy or power.</exception>
    public static ColumnMeaning Of(string header, FlowKind flow, string unit = "kWh", ColumnKind? kind = null)
    {
        ArgumentNullException.ThrowIfNull(header);
        var known = EnergyUnit.Find(unit) ?? throw Throw.UnknownUnit(unit);
        return new ColumnMeaning(header, flow, known.Name, kind ?? (known.IsPower ? ColumnKind.Power : ColumnKind.Energy), ByUser);
    }
}
