using System.Globalization;
using NodaTime;
using NodaTime.Text;

namespace SolarEconomics.Tests;

/// <summary>One published value with the inputs it belongs to.</summary>
public sealed record PublishedRow(
    string Id, string Check, string Inputs, string Expected, PublishedTolerance Tolerance, string Source, string Mark, string Disputed)
{
    public double Number(string name) => ToNumber(Text(name), name);

    public int Whole(string name) => int.Parse(Text(name), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);

    /// <summary>A list of numbers; <c>24*230</c> stands for 24 times 230.</summary>
    public double[] Numbers(string name) => [.. Words(name).SelectMany(word => word.Split('*') switch
    {
        [var times, var number] => Enumerable.Repeat(ToNumber(number, name), int.Parse(times, CultureInfo.InvariantCulture)),
        _ => [ToNumber(word, name)],
    })];

    public LocalDate[] Dates(string name) => [.. Words(name).Select(word => LocalDatePattern.Iso.Parse(word).Value)];

    public string[] Words(string name) => Text(name).Split(' ', StringSplitOptions.RemoveEmptyEntries);

    public bool Has(string name) => Pairs().Any(pair => pair.Name == name);

    public string Text(string name) => Pairs().Where(pair => pair.Name == name).Select(pair => pair.Value).FirstOrDefault()
        ?? throw new FormatException($"{Id} has no input \"{name}\"; it has: {string.Join(", ", Pairs().Select(pair => pair.Name))}.");

    private IEnumerable<(string Name, string Value)> Pairs() =>
        from part in Inputs.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
        let at = part.IndexOf('=', StringComparison.Ordinal)
        select at > 0 ? (part[..at].Trim(), part[(at + 1)..].Trim()) : throw new FormatException($"{Id}: \"{part}\" is not name=value.");

    /// <summary>A number, or a quotient such as 0.075/12 as sources write a monthly rate.</summary>
    private double ToNumber(string text, string name)
    {
        var value = 1.0;
        var parts = text.Split('/');
        for (var i = 0; i < parts.Length; i++)
        {
            if (!double.TryParse(parts[i], NumberStyles.Float, CultureInfo.InvariantCulture, out var part))
            {
                throw new FormatException($"{Id}: \"{text}\" of {name} is not a number.");
            }
            value = i == 0 ? part : value / part;
        }
        return value;
    }
}
