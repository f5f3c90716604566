using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>Every public member of the room of tariffs refuses nothing where it must have something, by the parameter's name.</summary>
public sealed class TariffGuardTests
{
    [Fact]
    public void Nothing_is_refused_by_its_name()
    {
        var start = Instant.FromUtc(2024, 4, 1, 0, 0);
        var grid = new IntervalGrid(start, Duration.FromHours(1), 48);
        var tariff = Tariff.Flat("Standard", "EUR", 0.25m, supplyPerDay: 0.50m, exportPerKwh: 0.10m, from: new LocalDate(2024, 1, 1));
        var history = TariffHistory.Of(tariff);
        var plan = history.On(grid, DateTimeZone.Utc, new BillingOptions());
        var energy = new MeteredEnergy([.. Enumerable.Repeat(1.0, 48)], [.. Enumerable.Repeat(0.5, 48)]) { UseKwh = Enumerable.Repeat(1.0, 48).ToArray(), GenerationKwh = Enumerable.Repeat(0.5, 48).ToArray() };
        var bills = plan.Bills(energy);
        Instant[] starts = [.. Enumerable.Range(0, 48).Select(h => start + Duration.FromHours(h))];
        Channel Of(string name, FlowKind flow) => new(name, flow, starts, [.. starts.Select(s => s + Duration.FromHours(1))], [.. Enumerable.Repeat(1.0, 48)], new Quality[48]);
        var readings = new Readings([Of("import", FlowKind.Import), Of("export", FlowKind.Export), Of("roof", FlowKind.Generation)], [], []);
        var site = Site.At("Invented", 53, -9, "Etc/UTC", "EUR");
        var home = HomeEnergy.Of(site, readings, history);
        var choice = new TariffChoice("Standard", history);
        var guards = new NullGuards("text", CultureInfo.InvariantCulture, DateTimeZone.Utc, grid, tariff, tariff.Parts[0], history, plan, new[] { plan }, energy, bills, bills[0], readings, site, home, choice, new[] { choice },
            new BillRequest(history, readings, DateTimeZone.Utc).Answer(), new CompareRequest([choice], readings, DateTimeZone.Utc).Answer(), BillCorrection.Of(bills, bills), BillWithAndWithout.Of(home), MarginalTable.Of(home),
            new EnergySystem(), Battery.Of(5, 0.9), PriceIndex.Of([(new YearMonth(2023, 1), 100), (new YearMonth(2024, 1), 102)]), new BillingOptions());
        var (tried, faults) = guards.Try(NullGuards.TypesOf("Tariffs"));
        Assert.True(faults.Count == 0, string.Join(Environment.NewLine, faults));
        Assert.InRange(tried, 40, 500);
    }
}
