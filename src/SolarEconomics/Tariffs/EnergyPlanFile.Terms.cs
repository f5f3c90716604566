using System.Text.Json;

namespace SolarEconomics;

/// <content>Discounts, fees and whom an energy plan is for.</content>
internal sealed partial class EnergyPlanFile
{
    private void ReadDiscounts(JsonElement contract, string at)
    {
        foreach (var (discount, place) in List(contract, "discounts", at))
        {
            var name = Text(discount, "displayName") ?? "discount";
            var isConditional = Text(discount, "type") == "CONDITIONAL";
            if (!isConditional && Text(discount, "type") != "GUARANTEED") continue;
            foreach (var (field, parts) in new[] { ("percentOfBill", Array.Empty<string>()), ("percentOfUse", UseParts) })
            {
                if (!discount.TryGetProperty(field, out var share) || share.ValueKind != JsonValueKind.Object || Number(share, "rate", $"{place}/{field}") is not { } rate) continue;
                // A discount with a condition is for those who meet it: until that is said, it is among what is not priced.
                if (isConditional) _priced.Remove($"{place}/{field}/rate");
                _tariff = _tariff.With(new PercentCharge(name, -rate, parts) { Condition = isConditional ? ConditionOf(discount, name) : null, PlanPath = Dotted($"{place}/{field}") });
            }
        }
    }

    /// <summary>Membership is paid by every home that has the plan; other fees are for single occasions, which no reading tells.</summary>
    private void ReadFees(JsonElement contract, string at)
    {
        foreach (var (fee, place) in List(contract, "fees", at))
        {
            if (Text(fee, "type") != "MEMBERSHIP") continue;
            (ChargePeriod Per, decimal Times)? term = Text(fee, "term") switch
            {
                "DAILY" => (ChargePeriod.Day, 1),
                "WEEKLY" => (ChargePeriod.Day, 7),
                "MONTHLY" => (ChargePeriod.Month, 1),
                "ANNUAL" => (ChargePeriod.Year, 1),
                _ => null,
            };
            if (term is { } t && Number(fee, "amount", place) is { } amount)
                _tariff = _tariff.With(new SupplyCharge("membership", amount / t.Times, t.Per) { PaysFor = "membership" });
        }
    }

    private void ReadEligibility(JsonElement contract, string at)
    {
        foreach (var (rule, _) in List(contract, "eligibility", at))
        {
            _tariff = Text(rule, "type") switch
            {
                "EXISTING_SOLAR" => _tariff with { Needs = _tariff.Needs | TariffNeeds.Solar },
                "EXISTING_BATTERY" => _tariff with { Needs = _tariff.Needs | TariffNeeds.Battery },
                "EXISTING_SMART_METER" => _tariff with { Needs = _tariff.Needs | TariffNeeds.SmartMeter },
                "EXISTING_CUST" => _tariff with { IsClosedToNew = true },
                _ => _tariff,
            };
        }
    }

    private string[] UseParts => [.. _tariff.Parts.OfType<EnergyPart>().Where(p => p.Side.IsCharge()).Select(p => p.Name)];

    private static string ConditionOf(JsonElement discount, string name) => Text(discount, "category") switch
    {
        "PAY_ON_TIME" => "pay on time",
        "DIRECT_DEBIT" => "direct debit",
        _ => name,
    };
}
