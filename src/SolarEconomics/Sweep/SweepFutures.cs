namespace SolarEconomics;

/// <summary>A handful of cases on their way through the years: what each year starts with, and what it leaves.</summary>
internal sealed class SweepFutures
{
    private readonly IReadOnlyList<BatteryCase> _cases;
    private readonly ReadOnlyMemory<int> _order;
    private readonly int _count;
    private readonly SweepSeries _series;
    private readonly int[] _worked;
    private readonly int _years;
    private readonly SweepYears[] _rows;
    private readonly double[] _drawnKwh;
    private readonly double[] _storedBefore;

    internal SweepFutures(IReadOnlyList<BatteryCase> cases, ReadOnlyMemory<int> order, int slots, SweepSeries series, int[] worked, int years)
    {
        (_cases, _order, _count, _series, _worked, _years) = (cases, order, order.Length, series, worked, years);
        Block = new SweepBlock(slots);
        _rows = new SweepYears[_count];
        (_drawnKwh, _storedBefore) = (new double[slots], new double[slots]);
        for (var slot = 0; slot < _count; slot++)
        {
            var battery = BatteryNumbers.Of(Case(slot));
            Block.StandbyKwh[slot] = Case(slot).Battery.StandbyW / 1000 * series.StepHours;
            Block.MostMovedKwh[slot] = battery.MostChargeKw * battery.Into * series.StepHours;
            Block.LeastMovedKwh[slot] = -battery.MostDischargeKw / battery.OutOf * series.StepHours;
            (Block.Into[slot], Block.PerInto[slot]) = (battery.Into, 1 / battery.Into);
            (Block.OutOf[slot], Block.PerOut[slot]) = (battery.OutOf, 1 / battery.OutOf);
            Block.StoredKwh[slot] = battery.StoredAtStartKwh;
            _rows[slot] = new SweepYears(years);
        }
        Block.StandbyKwh.AsSpan(_count).Fill(Block.StandbyKwh[0]);
    }

    internal SweepBlock Block { get; }

    /// <summary>What ages, ages by whole years: a year is worked out with what its start finds.</summary>
    internal void Begin(int year)
    {
        for (var slot = 0; slot < _count; slot++)
        {
            var c = Case(slot);
            Block.SunScale[slot] = c.SunScale * Math.Pow(1 - c.SunLossPerYear, year - 1);
            Block.UseScale[slot] = c.UseScale * Math.Pow(1 + c.UseGrowth, year - 1);
            Block.UsableKwh[slot] = UsableAt(slot, year - 1);
            Block.StoredKwh[slot] = Math.Min(Block.StoredKwh[slot], Block.UsableKwh[slot]);
            _storedBefore[slot] = Block.StoredKwh[slot];
        }
        // Slots without a case hold an empty battery behind the first case's net flow, so that they do not stand in the way of the shared loop.
        Block.SunScale.AsSpan(_count).Fill(Block.SunScale[0]);
        Block.UseScale.AsSpan(_count).Fill(Block.UseScale[0]);
    }

    internal void End(int year)
    {
        var next = Array.Find(_worked, y => y > year);
        for (var slot = 0; slot < _count; slot++)
        {
            var drawn = Block.DrawnKwh[slot];
            var chargedKwh = (drawn + Block.StoredKwh[slot] - _storedBefore[slot]) * Block.PerInto[slot];
            var givenKwh = drawn * Block.OutOf[slot];
            var netKwh = (_series.TotalSunKwh * Block.SunScale[slot]) - (_series.TotalUseKwh * Block.UseScale[slot]) - (Block.StandbyKwh[slot] * _series.SunKwh.Length);
            var import = Block.ImportKwh[slot];
            _rows[slot].Set(year, -Block.Earned[slot], import, netKwh - chargedKwh + givenKwh + import, givenKwh);
            _drawnKwh[slot] += drawn * Math.Max(1, next - year);
        }
    }

    internal void WriteTo(BatteryCaseResult[] results)
    {
        var isPreview = _worked.Length < _years;
        for (var slot = 0; slot < _count; slot++)
        {
            if (isPreview) _rows[slot].FillBetween(_worked);
            results[_order.Span[slot]] = _rows[slot].Result(Case(slot), Block.StoredKwh[slot], UsableAt(slot, _years), isPreview);
        }
    }

    private double UsableAt(int slot, int age)
    {
        var (c, newKwh) = (Case(slot), Case(slot).Battery.UsableKwh);
        var cycles = newKwh > 0 ? _drawnKwh[slot] / newKwh : 0;
        return newKwh * c.Ageing.ShareLeft(age, cycles);
    }

    private BatteryCase Case(int slot) => _cases[_order.Span[slot]];
}
