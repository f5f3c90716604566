using NodaTime;

namespace SolarEconomics;

/// <summary>A fixed charge over the days of a segment. Nothing in it depends on the readings, so its line is written once.</summary>
internal sealed class SegmentSupply : SegmentPart
{
    private readonly BillLine? _line;
    private readonly double _costWithTax;
    private readonly bool _onlyWithControlledLoad;

    internal SegmentSupply(SupplyCharge supply, SegmentContext context)
    {
        _onlyWithControlledLoad = supply.OnlyWithControlledLoad;
        var days = DaysOf(supply, context);
        var quantity = ChargeCount.Of(supply, days, context);
        // A thirty-first thirty-one times over is one month: the last digits of a decimal must not say otherwise.
        quantity = Math.Round(quantity, 12);
        if (quantity == 0) return;
        _line = BillWriter.Line(context, supply, supply.Name, quantity, RuleWords.Unit(supply.Per), supply.Amount, 1,
            RuleWords.Supply(supply, quantity, context.Tariff));
        _costWithTax = (double)(quantity * supply.Amount * (1 + context.Tariff.TaxOn(supply)));
    }

    internal override bool IsPricedByTheHour => !_onlyWithControlledLoad;

    internal override double CostWithTax(BillRun run) => _costWithTax;

    // A run of the flow model meters no controlled load, so that such a charge writes no line.
    internal override bool AddFloor(BillFloor floor) => _onlyWithControlledLoad || floor.AddByTheHour(this);

    internal override void AddLines(BillRun run, List<BillLine> lines)
    {
        if (_line is not null && (!_onlyWithControlledLoad || !run.ControlledLoadKwh.IsEmpty)) lines.Add(_line);
    }

    private static List<LocalDate> DaysOf(SupplyCharge supply, SegmentContext context)
    {
        var season = context.Tariff.Seasons.FirstOrDefault(s => string.Equals(s.Name, supply.Season, StringComparison.Ordinal));
        var days = new List<LocalDate>(context.Days.Days);
        for (var day = context.Days.Start; day < context.Days.End; day = day.PlusDays(1))
            if (season is null || season.Contains(day)) days.Add(day);
        return days;
    }
}
