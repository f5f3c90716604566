
namespace AlderWeir;

/// <summary>Writes refuge-ledger.csv. Fuel and oil stand in refuge-generator.csv, row by row, and not here.</summary>
internal static class RefugeLedgerFile
{
    private static readonly Receipt[] s_all =
    [
        new(new(2022, 1, 17), "purchase", 1_512.00m, "array", "8 modules of 450 W"),
        new(new(2022, 1, 24), "purchase", 690.00m, "array", "wall frame and cable"),
        new(new(2022, 2, 3), "purchase", 845.00m, "array", "charge controller, 60 A at 48 V"),
        new(new(2022, 2, 8), "purchase", 4_980.00m, "battery in", "24 open lead-acid cells of 700 Ah"),
        new(new(2022, 2, 8), "purchase", 210.00m, "battery in", "battery monitor with shunt"),
        new(new(2022, 2, 14), "purchase", 1_930.00m, "inverter", "5 kW inverter with charger"),
        new(new(2022, 2, 15), "purchase", 900.00m, "", "used 4.5 kW generator, 1,214 hours on its meter"),
        new(new(2022, 2, 26), "purchase", 1_350.00m, "", "fitting: electrician, two days, and the lift of the cells"),
        new(new(2022, 5, 6), "grant", 2_000.00m, "", "grant of the mountain club"),
        new(new(2023, 4, 12), "part", 38.50m, "", "air and fuel filter of the generator"),
        new(new(2023, 11, 3), "repair", 185.00m, "", "generator's starter renewed"),
        new(new(2024, 4, 10), "part", 41.20m, "", "air and fuel filter of the generator"),
        new(new(2024, 8, 29), "inspection", 120.00m, "", "electrical inspection"),
    ];

    internal static string Write()
    {
        var text = Text.Sheet();
        text.Append("# The refuge, off-grid sister of Alder Weir. Amounts are positive: the kind says which way money went. Fuel and oil stand in refuge-generator.csv.\n");
        text.Append("date,kind,amount,currency,device,description\n");
        foreach (var receipt in s_all)
            text.Append(Text.Row(Text.Day(receipt.Day), receipt.Kind, Text.Amount(receipt.Amount), "EUR", receipt.Device, receipt.Description)).Append('\n');
        return text.ToString();
    }
}
