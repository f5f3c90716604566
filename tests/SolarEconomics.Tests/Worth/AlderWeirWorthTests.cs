using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests;

public class AlderWeirWorthTests(AlderWeirSite demo) : IClassFixture<AlderWeirSite>
{
    [Fact]
    public void At_every_rung_the_true_value_lies_inside_the_range()
    {
        var truth = Money.Nominal(demo.TrueValue, demo.Site.Currency);
        Assert.Equal(4, demo.Worth.Ladder.Count);
        Assert.All(demo.Worth.Ladder, step => Assert.True(step.Range.Contains(truth), $"{step.Words}: {truth} is not in {step.Range}"));
    }

    [Fact]
    public void Widths_never_grow_from_rung_to_rung()
    {
        var widths = demo.Worth.Ladder.Select(step => step.Range.Width!.Value.Amount).ToList();
        Assert.Equal(widths.OrderDescending(), widths);
        Assert.True(widths[^1] < widths[0] / 4, $"The last rung should tell far more than the first: {string.Join(", ", widths)}");
    }

    [Fact]
    public void The_value_lies_in_its_own_range() => Assert.True(demo.Worth.Range.Contains(demo.Worth.Value!.Value));

    [Fact]
    public void Months_sum_to_the_value_to_the_cent() =>
        Assert.Equal(demo.Worth.Value!.Value.Amount, demo.Worth.Months.Sum(m => m.Value.Amount));

    [Fact]
    public void Every_kWh_goes_somewhere()
    {
        var e = demo.Worth.Energy;
        Assert.Equal(e.GeneratedKwh, e.UsedDirectlyKwh + e.UsedFromStorageKwh + e.ExportedKwh + e.LostKwh, 3);
    }

    [Fact]
    public void The_bridge_ends_at_the_value_after_running_costs_to_the_cent()
    {
        var bridge = demo.Worth.Bridge();
        Assert.Equal(demo.Worth.ValueAfterRunningCosts!.Value.Amount, bridge.End.Amount);
        Assert.Equal(bridge.End.Amount, bridge.Start.Amount + bridge.Corrections.Sum(c => c.Part.Amount));
        Assert.Equal(bridge.End.Amount, bridge.Start.Amount + bridge.Corrections.Sum(c => c.ShapleyPart.Amount));
    }

    [Fact]
    public void The_bridge_starts_at_counters_times_one_price()
    {
        var bridge = demo.Worth.Bridge();
        Assert.Equal((double)demo.Worth.StraightLine!.Value.Amount, (double)bridge.Start.Amount, 1.0);
    }

    [Fact]
    public void The_straight_line_adds_up_every_display_whatever_it_counts() =>
        Assert.Equal(demo.Readings.Counters.Sum(c => c.LastKwh), demo.Worth.StraightLine!.CountedKwh, 6);

    [Fact]
    public void The_outlook_is_paid_back_later_than_the_straight_line_says()
    {
        var outlook = demo.Worth.Outlook(new Assumptions { Years = 25, PriceGrowth = 0.03, DiscountRate = 0.05, Ageing = Ageing.Compound(0.006) });
        Assert.True(outlook.Payback.LastingYears > demo.Worth.StraightLine!.PaybackYears);
        Assert.True(outlook.Payback.DiscountedYears is null || outlook.Payback.DiscountedYears > outlook.Payback.LastingYears);
    }

    [Fact]
    public void The_bridge_of_the_outlook_ends_at_the_discounted_position_of_that_day()
    {
        var bridge = demo.Worth.Outlook().Bridge();
        Assert.Equal(0m, bridge.Start.Amount);
        Assert.Equal(bridge.End.Amount, bridge.Start.Amount + bridge.Corrections.Sum(c => c.Part.Amount));
    }

    [Fact]
    public void Yearly_flows_sum_to_the_position_at_the_horizon()
    {
        var outlook = demo.Worth.Outlook();
        Assert.Equal((double)outlook.PositionAtHorizon.Amount, (double)outlook.YearsAhead.Sum(y => y.Net.Amount), 0.5);
    }

    [Fact]
    public void The_rate_of_return_brings_the_present_value_to_zero()
    {
        var outlook = demo.Worth.Outlook();
        Assert.Equal(SolveEnd.Root, outlook.Irr.End);
        var npv = TimeValue.Xnpv(outlook.DatedFlow, outlook.Irr.Roots[0]);
        Assert.Equal(0, (double)npv.Amount, 0.05);
    }

    [Fact]
    public void Moving_the_price_growth_up_never_makes_the_payback_later()
    {
        var paybacks = new[] { 0.0, 0.02, 0.05 }.Select(g => demo.Worth.Outlook(new Assumptions { PriceGrowth = g }).Payback.LastingYears ?? 99).ToList();
        Assert.Equal(paybacks.OrderDescending(), paybacks);
    }

    [Fact]
    public void The_parts_of_all_devices_sum_to_the_value_to_the_cent()
    {
        var parts = demo.Worth.ByDevice;
        Assert.Equal(demo.Worth.Value!.Value.Amount, parts.Sum(d => d.Value.Amount));
        // What the meter shows beyond what any device counted belongs to none of them.
        Assert.InRange(parts.Sum(d => d.GeneratedKwh) / demo.Worth.Energy.GeneratedKwh, 0.99, 1.0000001);
        Assert.Contains(parts, d => d.Device == "south roof" && d.Paid!.Value.Amount == 5_960.50m); // 1960 + 540 + 1085.50 + 1380 + 920 + 75
    }

    [Fact]
    public void What_is_still_to_recover_is_the_cash_position_turned_round()
    {
        var recovery = demo.Worth.Recovery;
        Assert.Equal(-demo.Worth.CashSoFar!.Total.Amount, recovery.StillToRecover.Amount);
        Assert.Contains("is still to recover", recovery.Say(CultureInfo.InvariantCulture).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_failure_costs_its_receipts_and_the_energy_of_like_days() // the first inverter of the west roof: 165 + 1060 + 240 - 120
    {
        var cost = demo.Worth.CostOfFailure("west roof first inverter", new DateSpan(new LocalDate(2023, 6, 5), new LocalDate(2023, 6, 27)));
        Assert.Equal(1_345m, cost.Repair.Amount);
        Assert.InRange(cost.LostKwh, 22 * 10, 22 * 35);
        Assert.InRange(cost.LostEnergy.Amount, 40, 250);
        Assert.Contains(cost.Receipts, r => r.Kind == LedgerKind.WarrantyRefused);
        Assert.Equal(cost.Repair + cost.LostEnergy, cost.Total);
    }
}
