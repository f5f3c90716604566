namespace SolarEconomics.Tests;

public class ImpossibleOrderTests
{
    private static readonly EnergySystem s_home = new() { Battery = new Battery { UsableKwh = 8, StoredAtStartKwh = 4 } };

    private static string Refused(Func<Situation, Order> decide) =>
        Assert.Throws<ImpossibleOrderException>(() => Made.Run(s_home, [0, 0], [1, 1], Control.Of("mine", decide))).Message;

    [Fact]
    public void A_negative_order_is_told_how_the_other_way_is_written() => Assert.Equal(
        "Control \"mine\" ordered ChargeKwh -2 in interval 0 (1 Jan 2025, 00:00), expected 0 to 4 kWh: an order is never negative. What goes out of the battery is its DischargeKwh.",
        Refused(_ => Order.Charge(-2)));

    [Fact]
    public void No_number_is_told_as_such() => Assert.Equal(
        "Control \"mine\" ordered MostExportKwh NaN in interval 0 (1 Jan 2025, 00:00), expected 0 or more kWh: it is no number. See what it was worked out from.",
        Refused(_ => Order.Rest with { MostExportKwh = double.NaN }));

    [Fact]
    public void A_generator_that_is_not_there_is_told_as_such() => Assert.Equal(
        "Control \"mine\" ordered GeneratorKwh 2 in interval 1 (1 Jan 2025, 01:00), expected 0 kWh: there is no generator. Take the smaller of the wish and what Situation allows.",
        Refused(now => now.Interval == 1 ? Order.Rest with { GeneratorKwh = 2 } : Order.Rest));

    [Fact]
    public void A_discharge_that_exports_more_than_the_same_order_wants_is_refused()
    {
        // Use takes 1 of 3 kWh, so 2 kWh would be exported.
        Assert.Equal("Control \"mine\" ordered DischargeKwh 3 in interval 0 (1 Jan 2025, 00:00), expected 0 to 1.5 kWh: use takes no more, and the same order wants at most 0.5 kWh exported. " +
            "Take the smaller of the wish and what Situation allows.", Refused(_ => Order.Discharge(3) with { MostExportKwh = 0.5 }));
        Assert.Equal(0.5, Made.Run(s_home, [0], [1], Control.Of("mine", _ => Order.Discharge(1.5) with { MostExportKwh = 0.5 })).ExportKwh(0), 12);
    }

    [Fact]
    public void What_a_control_throws_is_told_with_the_local_time()
    {
        var (zero, calls) = (0, 0);
        var error = Assert.Throws<ControlFailedException>(() => Made.Run(s_home, [0, 0], [1, 1], Control.Of("mine", now => calls++ == 1 ? Order.Charge(1 / zero) : Order.Rest)));
        Assert.StartsWith("Control \"mine\" failed in interval 1 (1 Jan 2025, 01:00): found DivideByZeroException, \"", error.Message, StringComparison.Ordinal);
        Assert.Equal(1, error.Interval);
        Assert.IsType<DivideByZeroException>(error.InnerException);
        // An order that is refused, or work that is stopped, stays what it is.
        Assert.Throws<OperationCanceledException>(() => Made.Run(s_home, [0], [1], Control.Of("stop", _ => throw new OperationCanceledException())));
    }
}
