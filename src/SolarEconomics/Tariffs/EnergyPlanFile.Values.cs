using System.Globalization;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;

namespace SolarEconomics;

/// <content>Reading single values of an energy plan, and finding the prices that were not read.</content>
internal sealed partial class EnergyPlanFile
{
    private static readonly string[] PriceFields =
        ["unitPrice", "amount", "rate", "dailySupplyCharge", "dailySupplyCharges", "fixedAmount", "minimumValue", "maximumValue", "generalUnitPrice"];

    /// <summary>Lists every price in the plan that no line of a bill will come from.</summary>
    private void Sweep(JsonElement at, string pointer)
    {
        if (at.ValueKind == JsonValueKind.Array)
        {
            var i = 0;
            foreach (var item in at.EnumerateArray()) Sweep(item, FormattableString.Invariant($"{pointer}/{i++}"));
        }
        if (at.ValueKind != JsonValueKind.Object) return;
        foreach (var field in at.EnumerateObject())
        {
            var child = pointer + "/" + field.Name;
            if (field.Value.ValueKind is JsonValueKind.Object or JsonValueKind.Array) Sweep(field.Value, child);
            else if (PriceFields.Contains(field.Name, StringComparer.Ordinal) && !_priced.Contains(child)) _unpriced.Add(pointer);
        }
    }

    private static IEnumerable<(JsonElement Item, string Place)> List(JsonElement owner, string field, string at)
    {
        if (!owner.TryGetProperty(field, out var list) || list.ValueKind != JsonValueKind.Array) yield break;
        var i = 0;
        foreach (var item in list.EnumerateArray())
        {
            var place = FormattableString.Invariant($"{at}/{field}/{i++}");
            if (item.ValueKind == JsonValueKind.Object) yield return (item, place);
        }
    }

    private static string? Text(JsonElement owner, string field) =>
        owner.TryGetProperty(field, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;

    /// <summary>A number, which the form writes as text; a problem where it is none.</summary>
    private decimal? Number(JsonElement owner, string field, string at)
    {
        var place = at + "/" + field;
        if (!owner.TryGetProperty(field, out var value))
        {
            _problems.Add(_json.At(at, $"no field \"{field}\"", "it, with an amount such as \"0.31\""));
            return null;
        }
        _priced.Add(place);
        if (decimal.TryParse(value.ToString(), NumberStyles.Float, CultureInfo.InvariantCulture, out var number)) return number;
        _problems.Add(_json.At(place, value.GetRawText(), "an amount such as \"0.31\""));
        return null;
    }

    private AnnualDate? MonthDay(JsonElement owner, string field, string at)
    {
        if (Text(owner, field) is not { } text) return null;
        var parsed = AnnualDatePattern.Iso.Parse(text);
        if (parsed.Success) return parsed.Value;
        _problems.Add(_json.At(at + "/" + field, $"\"{text}\"", "a month and day such as \"07-01\""));
        return null;
    }

    private static AnnualDate DayAfter(AnnualDate day)
    {
        var next = day.InYear(2023).PlusDays(1);
        return new AnnualDate(next.Month, next.Day);
    }

    private static TariffDays DayOf(string day) => day switch
    {
        "MON" => TariffDays.Monday,
        "TUE" => TariffDays.Tuesday,
        "WED" => TariffDays.Wednesday,
        "THU" => TariffDays.Thursday,
        "FRI" => TariffDays.Friday,
        "SAT" => TariffDays.Saturday,
        "SUN" => TariffDays.Sunday,
        "PUBLIC_HOLIDAYS" => TariffDays.Holidays,
        _ => TariffDays.None,
    };

    /// <summary>A rate's name from its type: PEAK is "peak", OFF_PEAK is "off-peak".</summary>
    private static string Word(JsonElement rate) =>
        (Text(rate, "type") ?? Text(rate, "displayName") ?? "rate").ToLowerInvariant().Replace('_', '-');

    /// <summary>A JSON pointer as people write it: <c>data.electricityContract.fees[0]</c>.</summary>
    private static string Dotted(string pointer) => string.Concat(pointer.Split('/').Skip(1)
        .Select((name, i) => name.All(char.IsAsciiDigit) ? $"[{name}]" : i == 0 ? name : "." + name));
}
