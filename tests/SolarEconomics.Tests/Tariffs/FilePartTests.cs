using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>Every field of a tariff file lands in the part it belongs to, with its usual value where the file states none.</summary>
public sealed class FilePartTests
{
    [Theory]
    [InlineData("day", BlockPeriod.Day)]
    [InlineData("days of bill", BlockPeriod.DaysOfBill)]
    [InlineData("bill", BlockPeriod.Bill)]
    [InlineData("month", BlockPeriod.Month)]
    [InlineData("quarter", BlockPeriod.Quarter)]
    [InlineData("thirty days", BlockPeriod.ThirtyDays)]
    [InlineData("year", BlockPeriod.Year)]
    [InlineData("season", BlockPeriod.Season)]
    public void Blocks_are_read_with_the_time_they_are_for(string word, BlockPeriod per)
    {
        var part = Assert.IsType<EnergyPart>(Assert.Single(Part($$""" "import": [ { "name": "x", "blocksPer": "{{word}}", "blocks": [ { "upToKwh": 10, "perKwh": 0.1 }, { "perKwh": 0.2 } ] } ]""").Parts));
        Assert.Equal((per, false), (part.Rates[0].Blocks!.Per, part.Rates[0].Blocks!.RunsOn));
        Assert.Equal([new RateBlock(10, 0.1m), new RateBlock(null, 0.2m)], part.Rates[0].Blocks!.Steps);
        Assert.Equal(0.1m, part.Rates[0].PerKwh);
    }

    [Fact]
    public void Net_metering_tiers_and_blocks_that_run_on_are_read()
    {
        var net = Assert.IsType<NetMetering>(Assert.Single(Part(""" "import": [ { "name": "x", "perKwh": 0.3 } ], "netMetering": { "settlesInMonth": 4, "cashOutPerKwh": 0.05, "expiresAfterMonths": 12 }""").Parts));
        Assert.Equal(("import", 4, 0.05m, 12), (net.Name, net.SettlesInMonth, net.CashOutPerKwh, net.ExpiresAfterMonths));
        var plain = Assert.IsType<NetMetering>(Assert.Single(Part(""" "import": [ { "name": "x", "perKwh": 0.3 } ], "netMetering": {}""").Parts));
        Assert.Equal((null, 0m, null), (plain.SettlesInMonth, plain.CashOutPerKwh, plain.ExpiresAfterMonths));
        var tiers = Assert.IsType<TieredCharge>(Assert.Single(Part(
            """ "importTiers": { "name": "import", "per": "month", "tiers": [ { "upToKwh": 100, "blocks": [ { "perKwh": 0.1 } ] }, { "fixed": 5, "blocks": [ { "upToKwh": 50, "perKwh": 0.2 }, { "perKwh": 0.3 } ] } ] }""").Parts));
        Assert.Equal(("import", BlockPeriod.Month), (tiers.Name, tiers.Per));
        Assert.Equal([(100m, 0m, 1), (null, 5m, 2)], tiers.Tiers.Select(t => (t.UpToKwh, t.Fixed, t.Steps.Count)));
        var on = Assert.IsType<EnergyPart>(Assert.Single(Part(""" "import": [ { "name": "x", "blocksPer": "month", "blocksRunOn": true, "blocks": [ { "upToKwh": 10, "perKwh": 0.1 }, { "perKwh": 0.2 } ] } ]""").Parts));
        Assert.True(on.Rates[0].Blocks!.RunsOn);
    }

    [Fact]
    public void Fixed_charges_are_read_with_what_they_are_counted_by()
    {
        var supply = Part("""
            "import": [ { "name": "x", "perKwh": 0.3 } ], "supply": { "perDay": 0.5, "perMonth": 3, "proration": "whole" },
            "fees": [ { "name": "card", "perYear": 12, "proration": "by thirtieths", "paysFor": "a card" }, { "perBill": 1, "onlyWithControlledLoad": true, "condition": "on paper" } ],
            "fixedDiscounts": [ { "perBill": 2 } ], "prepayments": [ { "perMonth": 10 } ]
            """).Parts.OfType<SupplyCharge>();
        Assert.Equal(
        [
            ("supply charge", 0.5m, ChargePeriod.Day, Proration.Whole, "being connected", false, null, null), ("supply charge", 3m, ChargePeriod.Month, Proration.Whole, "being connected", false, null, null),
            ("card", 12m, ChargePeriod.Year, Proration.ByThirtieths, "a card", false, null, null), ("fee", 1m, ChargePeriod.Bill, Proration.ByDays, "being connected", true, "on paper", null),
            ("discount", -2m, ChargePeriod.Bill, Proration.ByDays, "discount", false, null, null), ("paid in advance", -10m, ChargePeriod.Month, Proration.ByDays, "payment in advance", false, null, 0m),
        ], supply.Select(s => (s.Name, s.Amount, s.Per, s.Proration, s.PaysFor, s.OnlyWithControlledLoad, s.Condition, s.TaxFraction)));
    }

    [Fact]
    public void What_lowers_the_bill_is_read_with_its_tax_and_limits()
    {
        var tariff = Part("""
            "tax": 0.2, "exportTax": 0.05, "exportLimitKw": 5, "import": [ { "name": "x", "perKwh": 0.3 } ], "export": [ { "name": "feed-in", "perKwh": 0.1 } ],
            "exportCharges": [ { "name": "network", "perKwh": 0.02 } ], "curtailed": [ { "name": "held back", "perKwh": 0.04 } ],
            "minimumBill": { "amount": 9, "per": "month" }, "creditLimits": [ { "amount": 7, "of": [ "export" ] } ], "creditKept": { "carried": false, "expiresInMonth": 3 }
            """);
        var energy = tariff.Parts.OfType<EnergyPart>().ToDictionary(p => p.Name);
        Assert.Equal((0.1m, 0.05m, 5m), (energy["export"].Rates[0].PerKwh, tariff.TaxOn(energy["export"]), energy["export"].MostKw));
        Assert.Equal((-0.02m, 0.2m, null), (energy["export charge"].Rates[0].PerKwh, tariff.TaxOn(energy["export charge"]), energy["export charge"].MostKw));
        Assert.Equal((EnergySide.Curtailed, 0.04m, 0m), (energy["curtailed"].Side, energy["curtailed"].Rates[0].PerKwh, tariff.TaxOn(energy["curtailed"])));
        var (minimum, limit, kept) = (tariff.Parts.OfType<MinimumBill>().Single(), tariff.Parts.OfType<CreditLimit>().Single(), tariff.Parts.OfType<CreditKept>().Single());
        Assert.Equal(("minimum bill", 9m, ChargePeriod.Month), (minimum.Name, minimum.Amount, minimum.Per));
        Assert.Equal(("credit limit", 7m, ChargePeriod.Bill), (limit.Name, limit.Amount, limit.Per));
        Assert.Equal(["export"], limit.Of);
        Assert.Equal(("credit", false, 3), (kept.Name, kept.IsCarried, kept.ExpiresInMonth));
        var usual = Part(""" "import": [ { "name": "x", "perKwh": 0.3 } ], "creditKept": {}""").Parts.OfType<CreditKept>().Single();
        Assert.Equal((true, null), (usual.IsCarried, usual.ExpiresInMonth));
    }

    [Fact]
    public void What_few_tariffs_have_is_read_with_its_usual_values_where_it_states_none()
    {
        var plain = Part("""
            "import": [ { "name": "x", "perKwh": 0.3 } ], "demand": [ { "name": "demand", "perKw": 2 } ], "reactive": { "name": "reactive energy", "perKvarh": 0.02 }, "connection": [ { "name": "fuse", "perUnit": 1, "unit": "kW", "size": 6 } ],
            "levies": [ { "name": "share", "fraction": 0.1 } ], "discounts": [ { "name": "share", "fraction": 0.05, "condition": "pay on time" } ], "eventRebates": [ { "name": "rebate", "perKwh": 1, "days": [ "2024-04-02" ], "hours": [ "17:00-19:00" ] } ]
            """).Parts;
        var demand = plain.OfType<DemandCharge>().Single();
        Assert.Equal(("demand", 2m, ChargePeriod.Month, 30, 0m, 0m, 11), (demand.Name, demand.PerKw, demand.Per, demand.AveragingMinutes, demand.MinimumKw, demand.RatchetShare, demand.RatchetBills));
        Assert.Equal((RateWindow.Always, null, 0m, DemandUnit.Kilowatt, 0m, false, false), (demand.Window, demand.RatchetSeason, demand.EarlierKw, demand.Unit, demand.KvaShare, demand.EachDay, demand.EachMonth));
        Assert.Equal(("reactive energy", 0.5m), (plain.OfType<ReactiveCharge>().Single().Name, plain.OfType<ReactiveCharge>().Single().FreeShare));
        Assert.Equal((ConnectionUnit.Kilowatt, 6m, ChargePeriod.Month), (plain.OfType<ConnectionCharge>().Single().Unit, plain.OfType<ConnectionCharge>().Single().Size, plain.OfType<ConnectionCharge>().Single().Per));
        Assert.Equal([("share", 0.1m, null), ("share", -0.05m, "pay on time")], plain.OfType<PercentCharge>().Select(p => (p.Name, p.Fraction, p.Condition)));
        var rebate = plain.OfType<EventRebate>().Single();
        Assert.Equal(("rebate", 10, 0m), (rebate.Name, rebate.BaselineDays, rebate.TaxFraction));
        var whole = Part("""
            "seasons": [ { "name": "winter", "from": "11-01", "until": "03-01" } ], "import": [ { "name": "x", "perKwh": 0.3 } ],
            "demand": [ { "name": "peak", "steps": [ { "upTo": 3, "price": 1 }, { "price": 2 } ], "per": "day", "averagingMinutes": 15, "minimumKw": 1, "ratchetShare": 0.5, "ratchetBills": 3, "ratchetSeason": "winter",
              "earlierKw": 4, "unit": "kVA", "kvaShare": 0.9, "eachDay": true, "eachMonth": true, "when": { "hours": [ "17:00-19:00" ] } } ]
            """).Parts.OfType<DemandCharge>().Single();
        Assert.Equal(("peak", ChargePeriod.Day, 15, 1m, 0.5m, 3, "winter"), (whole.Name, whole.Per, whole.AveragingMinutes, whole.MinimumKw, whole.RatchetShare, whole.RatchetBills, whole.RatchetSeason));
        Assert.Equal((4m, DemandUnit.KilovoltAmpere, 0.9m, true, true, "every day, 17:00–19:00"), (whole.EarlierKw, whole.Unit, whole.KvaShare, whole.EachDay, whole.EachMonth, whole.Window.ToString()));
        Assert.Equal([new DemandStep(3, 1), new DemandStep(null, 2)], whole.Steps);
    }

    [Fact]
    public void A_folder_gives_its_tariffs_in_order_of_their_names_and_the_home_s_clock()
    {
        var folder = TestFiles.NewFolder();
        Assert.Contains("found no file that ends in .json", Assert.Throws<RecordException>(() => TariffChoice.LoadAll(folder)).Message, StringComparison.Ordinal);
        File.WriteAllText(Path.Combine(folder, "b.json"), """{ "version": 1, "currency": "EUR", "zone": "Europe/Dublin", "tariffs": [ { "name": "B", "from": "2022-01-01", "import": [ { "name": "x", "perKwh": 0.3 } ] } ] }""");
        File.WriteAllText(Path.Combine(folder, "a.json"), """{ "version": 1, "currency": "EUR", "tariffs": [ { "name": "A", "from": "2022-01-01", "import": [ { "name": "x", "perKwh": 0.2 } ] } ] }""");
        File.WriteAllText(Path.Combine(folder, "notes.txt"), "no tariff");
        var readings = TestFiles.Write("100,NEM12,202301010000,A,B\n200,M1,X,E1,E1,,S1,kWh,30,\n300,20240601," + string.Join(',', Enumerable.Repeat("0.5", 48)) + ",A,,,20240602000000,\n900\n");
        Assert.Equal(["a", "b"], TariffChoice.LoadAll(folder).Select(c => c.Name));
        var ask = CompareRequest.Load(folder, readings);
        Assert.Equal("Europe/Dublin", ask.Zone.Id);
        Assert.Equal([("a", 4.80m), ("b", 7.20m)], ask.Answer().Ranks.Select(r => (r.Name, r.Total.Amount)));
        Assert.Equal("Etc/UTC", CompareRequest.Load(folder, readings, DateTimeZoneProviders.Tzdb["Etc/UTC"]).Zone.Id);
        Assert.Contains("found no such folder", Assert.Throws<RecordException>(() => TariffChoice.LoadAll(Path.Combine(folder, "none"))).Message, StringComparison.Ordinal);
    }

    /// <summary>The one version of a file with these parts.</summary>
    private static Tariff Part(string parts) =>
        TariffHistory.Load(TestFiles.Write("{ \"version\": 1, \"currency\": \"EUR\", \"tariffs\": [ { \"name\": \"A\", \"from\": \"2022-01-01\", " + parts + " } ] }")).Latest;
}
