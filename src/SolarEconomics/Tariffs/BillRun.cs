namespace SolarEconomics;

/// <summary>The readings of one run over all periods, and what one period hands on to the next.</summary>
internal readonly ref partial struct BillRun
{
    internal BillRun(ReadOnlySpan<double> importKwh, ReadOnlySpan<double> exportKwh, BillCarry carry)
    {
        ImportKwh = importKwh;
        ExportKwh = exportKwh;
        Carry = carry;
    }

    internal BillRun(MeteredEnergy energy, BillCarry carry) : this(energy.ImportKwh, energy.ExportKwh, carry)
    {
        ControlledLoadKwh = energy.ControlledLoadKwh;
        CurtailedKwh = energy.CurtailedKwh;
        ReactiveKvarh = energy.ReactiveKvarh;
        UseKwh = energy.UseKwh;
        GenerationKwh = energy.GenerationKwh;
    }

    internal ReadOnlySpan<double> ImportKwh { get; }

    internal ReadOnlySpan<double> ExportKwh { get; }

    internal ReadOnlySpan<double> ControlledLoadKwh { get; }

    internal ReadOnlySpan<double> CurtailedKwh { get; }

    internal ReadOnlySpan<double> ReactiveKvarh { get; }

    internal ReadOnlySpan<double> UseKwh { get; }

    internal ReadOnlySpan<double> GenerationKwh { get; }

    internal BillCarry Carry { get; }

    /// <summary>The column of one side; empty where nothing counts it.</summary>
    internal ReadOnlySpan<double> Of(EnergySide side) => side switch
    {
        EnergySide.Import => ImportKwh,
        EnergySide.Export => ExportKwh,
        EnergySide.ControlledLoad => ControlledLoadKwh,
        _ => CurtailedKwh,
    };
}
