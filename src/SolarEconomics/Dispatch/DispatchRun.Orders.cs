namespace SolarEconomics;

/// <content>What cannot be done is refused by name; only the dust of floating point is brushed off.</content>
internal sealed partial class DispatchRun
{
    private const double DustKwh = 1e-9;

    private Order Checked(Order order, Control control, int i)
    {
        var now = _now;
        var charge = Within(order.ChargeKwh, now.MostChargeKwh, nameof(Order.ChargeKwh), "it is the most that battery and converter take", control, i);
        var discharge = Within(order.DischargeKwh, now.MostDischargeKwh, nameof(Order.DischargeKwh), "it is the most that battery and converter give", control, i);
        if (charge > 0 && discharge > 0) throw Throw.BothWays(control.Name, i, At(i), charge, discharge);
        return order with
        {
            ChargeKwh = charge,
            DischargeKwh = discharge,
            GeneratorKwh = Within(order.GeneratorKwh, now.MostGeneratorKwh, nameof(Order.GeneratorKwh), _system.Generator is null ? "there is no generator" : "it is the most that the generator gives now", control, i),
            ShedKwh = Within(order.ShedKwh, now.UseKwh, nameof(Order.ShedKwh), "it is the wanted use", control, i),
            DeferrableKwh = order.DeferrableKwh is { } deferrable
                ? Within(deferrable, now.DeferrableMayKwh, nameof(Order.DeferrableKwh), "it is what the waiting loads may take now", control, i)
                : now.DeferrableKwh,
            MostExportKwh = order.MostExportKwh is { } export
                ? Within(export, double.PositiveInfinity, nameof(Order.MostExportKwh), "it is an energy", control, i)
                : null,
        };
    }

    private double Within(double kwh, double mostKwh, string field, string because, Control control, int i)
    {
        if (kwh >= 0 && kwh <= mostKwh) return kwh;
        if (kwh > mostKwh && kwh <= mostKwh + DustKwh) return mostKwh;
        if (kwh < 0 && kwh >= -DustKwh) return 0;
        throw Throw.ImpossibleOrder(control.Name, field, i, At(i), kwh, mostKwh, because);
    }

    private NodaTime.LocalDateTime At(int i) => _conditions.Time.LocalStartOf(i);
}
