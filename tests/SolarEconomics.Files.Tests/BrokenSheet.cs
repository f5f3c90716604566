using System.Globalization;

namespace SolarEconomics.Files.Tests;

/// <summary>Rows of a sheet with faults of people and programs in some cells, and the energy that a reader who only adds finds in it.</summary>
/// <param name="Xml">The rows.</param>
/// <param name="Kwh">Sum of all cells under the header of energy that hold a number.</param>
internal sealed record BrokenSheet(string Xml, double Kwh)
{
    private const int Rows = 96;

    internal static BrokenSheet Of(int seed)
    {
        var random = new Random(seed);
        var (days, values, hidden) = (new string[Rows], new string[Rows], new bool[Rows]);
        for (var i = 0; i < Rows; i++)
        {
            days[i] = string.Create(CultureInfo.InvariantCulture, $"s=\"1\"><v>{45413 + (i / 48.0):R}</v>");
            values[i] = string.Create(CultureInfo.InvariantCulture, $"><v>{i % 7 * 0.125}</v>");
        }
        for (var times = random.Next(1, 9); times > 0; times--)
        {
            var row = random.Next(Rows);
            switch (random.Next(10))
            {
                case 0: values[row] = "t=\"e\"><v>#DIV/0!</v>"; break;
                case 1: values[row] = "t=\"inlineStr\"><is><t>soon</t></is>"; break;
                case 2: values[row] = "><f>Z1*2</f>"; break;
                case 3: values[row] = "><v>1e300</v>"; break;
                case 4: values[row] = "><v>-2.5</v>"; break;
                case 5: days[row] = "t=\"inlineStr\"><is><t>yesterday</t></is>"; break;
                case 6: days[row] = "t=\"e\"><v>#N/A</v>"; break;
                case 7: days[row] = days[Math.Max(0, row - 1)]; break;
                case 8: days[row] = "><f>NOW()</f>"; break;
                default: hidden[row] = true; break;
            }
        }
        var xml = """<row r="1"><c r="A1" t="inlineStr"><is><t>Time</t></is></c><c r="B1" t="inlineStr"><is><t>Import (kWh)</t></is></c></row>"""
            + string.Concat(Enumerable.Range(0, Rows).Select(i => string.Create(CultureInfo.InvariantCulture, $"<row r=\"{i + 2}\"{(hidden[i] ? " hidden=\"1\"" : "")}><c r=\"A{i + 2}\" {days[i]}</c><c r=\"B{i + 2}\" {values[i]}</c></row>")));
        return new BrokenSheet(xml, values.Where(v => v.StartsWith("><v>", StringComparison.Ordinal)).Select(v => double.Parse(v[4..^4], CultureInfo.InvariantCulture)).Where(v => Math.Abs(v) < 1e14).Sum());
    }
}
