namespace SolarEconomics;

/// <summary>The readings of one run over all periods, and what one period hands on to the next.</summary>
internal readonly ref struct BillRun
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
    }

    internal ReadOnlySpan<double> ImportKwh { get; }

    internal ReadOnlySpan<double> ExportKwh { get; }

    internal ReadOnlySpan<double> ControlledLoadKwh { get; }

    internal ReadOnlySpan<double> CurtailedKwh { get; }

    internal ReadOnlySpan<double> ReactiveKvarh { get; }

    internal BillCarry Carry { get; }

    /// <summary>The same run for a tariff without a price for the controlled load, whose energy then counts as import.</summary>
    internal BillRun WithoutControlledLoad()
    {
        if (ControlledLoadKwh.IsEmpty) return this;
        var import = new double[ImportKwh.Length];
        for (var i = 0; i < import.Length; i++) import[i] = ImportKwh[i] + ControlledLoadKwh[i];
        return new BillRun(new MeteredEnergy(import, ExportKwh.ToArray()) { CurtailedKwh = CurtailedKwh.ToArray(), ReactiveKvarh = ReactiveKvarh.ToArray() }, Carry);
    }

    /// <summary>The column of one side; empty where nothing counts it.</summary>
    internal ReadOnlySpan<double> Of(EnergySide side) => side switch
    {
        EnergySide.Import => ImportKwh,
        EnergySide.Export => ExportKwh,
        EnergySide.ControlledLoad => ControlledLoadKwh,
        _ => CurtailedKwh,
    };
}
