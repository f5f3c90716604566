
namespace AlderWeir;

/// <summary>Writes ledger.csv from the invented receipts.</summary>
internal static class LedgerFile
{
    internal static string Write()
    {
        var text = Text.Sheet();
        text.Append("# Amounts are positive: paid by the owner for a cost, received for a grant, a sale or a warranty that paid. A refused claim moved no money. The owner's own hours are not in it.\n");
        text.Append("date,kind,amount,currency,device,description\n");
        foreach (var receipt in Receipts.All)
            text.Append(Text.Row(Text.Day(receipt.Day), receipt.Kind, Text.Amount(receipt.Amount), "EUR", receipt.Device, receipt.Description)).Append('\n');
        return text.ToString();
    }
}
