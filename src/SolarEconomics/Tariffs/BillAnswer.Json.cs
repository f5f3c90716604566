using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;
using NodaTime.Text;

namespace SolarEconomics;

/// <content>The bill as JSON for other programs.</content>
public sealed partial record BillAnswer
{
    /// <summary>The bill as JSON: <c>from</c>, <c>to</c> (excluded), <c>currency</c>, <c>lines</c>, <c>totalBeforeTax</c>, <c>tax</c>, <c>total</c>,
    /// <c>coveredShare</c>, <c>isEstimate</c> and <c>unpriced</c>; where periods were asked for, <c>periods</c> with the totals of each. Amounts are texts, so that no cent is lost; <c>null</c> where there is no total.</summary>
    public string ToJson()
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true }))
        {
            json.WriteStartObject();
            json.WriteString("from", LocalDatePattern.Iso.Format(Days.Start));
            json.WriteString("to", LocalDatePattern.Iso.Format(Days.End));
            json.WriteString("currency", Currency.Code);
            json.WriteStartArray("lines");
            foreach (var line in Lines) WriteLine(json, line);
            json.WriteEndArray();
            WriteMoney(json, "totalBeforeTax", TotalBeforeTax);
            WriteMoney(json, "tax", Tax);
            WriteMoney(json, "total", Total);
            json.WriteNumber("coveredShare", CoveredShare);
            json.WriteBoolean("isEstimate", IsEstimate);
            json.WriteStartArray("unpriced");
            foreach (var path in Unpriced) json.WriteStringValue(path);
            json.WriteEndArray();
            if (HasPeriods) WritePeriods(json);
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    private void WritePeriods(Utf8JsonWriter json)
    {
        json.WriteStartArray("periods");
        foreach (var bill in Bills)
        {
            json.WriteStartObject();
            json.WriteString("from", LocalDatePattern.Iso.Format(bill.Period.Start));
            json.WriteString("to", LocalDatePattern.Iso.Format(bill.Period.End));
            WriteMoney(json, "totalBeforeTax", HasTotal ? bill.TotalBeforeTax : null);
            WriteMoney(json, "tax", HasTotal ? bill.Tax : null);
            WriteMoney(json, "total", HasTotal ? bill.Total : null);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void WriteLine(Utf8JsonWriter json, BillLine line)
    {
        json.WriteStartObject();
        json.WriteString("part", line.Part);
        json.WriteNumber("quantity", Trim(line.Quantity));
        json.WriteString("unit", line.Unit);
        json.WriteNumber("rate", Trim(line.Rate));
        json.WriteString("amount", Text(line.Amount));
        json.WriteString("tax", Text(line.Tax));
        json.WriteString("why", line.Why);
        json.WriteEndObject();
    }

    private static void WriteMoney(Utf8JsonWriter json, string name, Money? money)
    {
        if (money is { } amount) json.WriteString(name, Text(amount));
        else json.WriteNull(name);
    }

    private static string Text(Money money) => money.Amount.ToString("0.00##########", CultureInfo.InvariantCulture);

    /// <summary>The same number without zeros at its end.</summary>
    private static decimal Trim(decimal value) => decimal.Parse(value.ToString("0.############", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
