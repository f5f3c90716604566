namespace SolarEconomics;

/// <content>Where each kWh of an interval goes once the order stands.</content>
internal sealed partial class DispatchRun
{
    private void Settle(int i, Order order, Control control)
    {
        var (now, hours, converter) = (_now, _hours[i], _system.Converter);
        var waitingKwh = order.DeferrableKwh!.Value;
        var useKwh = now.UseKwh + waitingKwh - order.ShedKwh;

        // The DC bus: its arrays charge the battery first, the rest goes to the board as far as the converter takes it.
        var dcToBattery = Math.Min(order.ChargeKwh, now.DcGenerationKwh);
        var fromBoard = order.ChargeKwh - dcToBattery;
        var drawn = fromBoard / converter.ToDc;
        var dcLeft = now.DcGenerationKwh - dcToBattery;
        var arraysToAc = Math.Min(dcLeft * converter.ToAc, Limit(converter.MostToAcKw, hours));
        var batteryToAc = order.DischargeKwh * converter.ToAc;

        // The board: arrays first, then generator, battery, grid; each serves the plant's standby, the use, the charging, in this order.
        var need = new BoardNeed(now.StandbyKwh, useKwh, drawn);
        var supply = now.AcGenerationKwh + arraysToAc;
        var arrays = need.Serve(supply, mayCharge: true);
        var generator = need.Serve(order.GeneratorKwh, mayCharge: true);
        var battery = need.Serve(batteryToAc, mayCharge: false);
        var grid = need.Serve(now.MostImportKwh, mayCharge: true);
        DemandPossible(order, control, i, need, generator, battery);
        DemandWish(order, control, i, battery);
        // Where the plant has too little, a waiting load is the first to do without, as it can be tried again.
        var stillWaitingKwh = Math.Min(waitingKwh, need.UseKwh);
        _waiting.Run(i, waitingKwh - stillWaitingKwh);

        // The dust by which a discharge may pass the wish goes with it.
        var mostExport = Math.Min(now.MostExportKwh, Math.Max(battery.LeftKwh, order.MostExportKwh ?? double.PositiveInfinity));
        var arraysToExport = Math.Min(arrays.LeftKwh, mostExport - battery.LeftKwh);
        var curtailedAtBoard = arrays.LeftKwh - arraysToExport;
        // Curtailment falls on both kinds of arrays in proportion to what each brings to the board; what a DC array leaves is counted before the converter.
        var curtailedOfDc = supply > 0 ? curtailedAtBoard * (arraysToAc / supply) : 0;
        arraysToAc -= curtailedOfDc;
        var dcThrough = arraysToAc / converter.ToAc;

        Column(FlowPath.ArrayToUse)[i] = arrays.ToUseKwh;
        Column(FlowPath.ArrayToStandby)[i] = arrays.ToStandbyKwh;
        Column(FlowPath.ArrayToBattery)[i] = dcToBattery + arrays.ToChargeKwh;
        Column(FlowPath.ArrayToExport)[i] = arraysToExport;
        Column(FlowPath.ArrayCurtailed)[i] = _supply.ClippedKwh[i] + (curtailedAtBoard - curtailedOfDc) + (dcLeft - dcThrough);
        Column(FlowPath.GridToUse)[i] = grid.ToUseKwh;
        Column(FlowPath.GridToStandby)[i] = grid.ToStandbyKwh;
        Column(FlowPath.GridToBattery)[i] = grid.ToChargeKwh;
        Column(FlowPath.BatteryToUse)[i] = battery.ToUseKwh;
        Column(FlowPath.BatteryToStandby)[i] = battery.ToStandbyKwh;
        Column(FlowPath.BatteryToExport)[i] = battery.LeftKwh;
        Column(FlowPath.GeneratorToUse)[i] = generator.ToUseKwh;
        Column(FlowPath.GeneratorToStandby)[i] = generator.ToStandbyKwh;
        Column(FlowPath.GeneratorToBattery)[i] = generator.ToChargeKwh;
        Column(FlowPath.Unserved)[i] = need.UseKwh - stillWaitingKwh + order.ShedKwh + (_useKwh[i] - now.UseKwh);
        Column(FlowPath.ConverterLost)[i] = (dcThrough - arraysToAc) + (drawn - fromBoard) + (order.DischargeKwh - batteryToAc);
        SettleBattery(i, order);
        _generatorRan = order.GeneratorKwh > 0;
        _peakKw = Math.Max(_peakKw, (grid.ToUseKwh + grid.ToStandbyKwh + grid.ToChargeKwh) / hours);
    }

    private void SettleBattery(int i, Order order)
    {
        if (order.ChargeKwh > 0)
        {
            // The cells come first; what goes in beyond full levels them.
            var beyondKwh = Math.Max(0, order.ChargeKwh - _mostIntoCells);
            var after = Math.Min(_battery.UsableKwh, _stored + ((order.ChargeKwh - beyondKwh) * _battery.ChargeEfficiency));
            Column(FlowPath.ChargeLost)[i] = order.ChargeKwh - beyondKwh - (after - _stored);
            Column(FlowPath.EqualisingLost)[i] = beyondKwh;
            _stored = after;
        }
        else if (order.DischargeKwh > 0)
        {
            var after = Math.Max(0, _stored - (order.DischargeKwh / _battery.DischargeEfficiency));
            Column(FlowPath.DischargeLost)[i] = _stored - after - order.DischargeKwh;
            _stored = after;
        }
    }

    /// <summary>An order that wants less exported than its own discharge sends is no order.</summary>
    private void DemandWish(Order order, Control control, int i, BoardShare battery)
    {
        if (order.MostExportKwh is { } wish && battery.LeftKwh > wish + DustKwh)
            throw Throw.ImpossibleOrder(control.Name, nameof(Order.DischargeKwh), i, At(i), order.DischargeKwh, order.DischargeKwh - ((battery.LeftKwh - wish) / _system.Converter.ToAc),
                FormattableString.Invariant($"use takes no more, and the same order wants at most {wish:0.######} kWh exported"));
    }

    private void DemandPossible(Order order, Control control, int i, BoardNeed need, BoardShare generator, BoardShare battery)
    {
        if (need.ChargeKwh > DustKwh)
            throw Throw.ImpossibleOrder(control.Name, nameof(Order.ChargeKwh), i, At(i), order.ChargeKwh, order.ChargeKwh - (need.ChargeKwh * _system.Converter.ToDc),
                "arrays, generator and what the grid connection leaves give no more");
        if (generator.LeftKwh > DustKwh)
            throw Throw.ImpossibleOrder(control.Name, nameof(Order.GeneratorKwh), i, At(i), order.GeneratorKwh, order.GeneratorKwh - generator.LeftKwh,
                "use and ordered charging take no more, and a generator never feeds the grid");
        if (battery.LeftKwh > _now.MostExportKwh + DustKwh)
            throw Throw.ImpossibleOrder(control.Name, nameof(Order.DischargeKwh), i, At(i), order.DischargeKwh,
                order.DischargeKwh - ((battery.LeftKwh - _now.MostExportKwh) / _system.Converter.ToAc), "use takes no more and the export limit binds");
    }
}
