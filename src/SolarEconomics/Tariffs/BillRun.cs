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

    internal ReadOnlySpan<double> ImportKwh { get; }

    internal ReadOnlySpan<double> ExportKwh { get; }

    internal BillCarry Carry { get; }

    internal ReadOnlySpan<double> Of(EnergySide side) => side == EnergySide.Import ? ImportKwh : ExportKwh;
}
