using System.Text.RegularExpressions;

namespace SolarEconomics;

/// <summary>Understands a column by the words of its header, and says why.</summary>
internal static partial class HeaderWords
{
    private static readonly (FlowKind Flow, string[] Words)[] FlowWords =
    [
        (FlowKind.BatteryDischarge, ["battery discharge", "battery discharged", "from battery", "battery out", "discharge", "discharged", "entladung"]),
        (FlowKind.BatteryCharge, ["battery charge", "battery charged", "to battery", "battery in", "charge", "charged", "charging", "ladung"]),
        (FlowKind.Export, ["to grid", "grid export", "feed in", "feedin", "fed in", "grid feed", "einspeisung", "export", "exported", "exports", "sold", "injection"]),
        (FlowKind.Import, ["from grid", "grid import", "grid consumption", "grid supply", "netzbezug", "bezug", "import", "imported", "imports", "bought", "purchased"]),
        (FlowKind.Generation, ["generation", "generated", "production", "produced", "yield", "solar", "pv", "wind", "erzeugung", "ertrag", "produktion"]),
        (FlowKind.Use, ["use", "used", "usage", "consumption", "consumed", "load", "demand", "verbrauch"]),
    ];

    private static readonly string[] NoEnergyWords =
        ["price", "cost", "tariff", "temperature", "temp", "humidity", "voltage", "current", "soc", "state of charge", "percent", "irradiance", "frequency", "rate", "preis", "kosten", "standing charge", "supply charge", "service charge", "demand charge", "prix", "precio", "prezzo", "preço", "prijs", "pris", "cena", "coût", "coste", "costo", "temperatur", "température", "temperatura"];

    private static readonly string[] NameWords =
        ["id", "nmi", "mpan", "mprn", "esiid", "serial", "serial number", "meter number", "meter no", "account", "account number", "customer", "postcode", "zip", "device number", "row", "index", "nr"];

    private static readonly string[] CounterWords = ["counter", "lifetime", "cumulative", "meter reading", "meter state", "register reading", "odometer", "zählerstand", "zaehlerstand", "total increasing"];

    private static readonly string[] CounterHints = ["reading", "total", "state", "index", "stand", "gesamt"];

    private static readonly string[] NetWords = ["net", "netto", "signed"];

    private static readonly string[] EndWords = ["end", "until", "ending", "bis", "ende"];

    private static readonly string[] StartWords = ["start", "from", "begin", "beginning", "von"];

    internal static bool NamesEnd(string header) => Any(Split(header), EndWords) && !Any(Split(header), StartWords);

    /// <summary>Whether a header speaks of what a counter shows, though it does not say so.</summary>
    internal static bool HintsAtCounter(string header) => Any(Split(header), CounterHints);

    /// <summary>The meaning of a column of numbers.</summary>
    internal static ColumnMeaning Understand(string header, int number, string? unitRow, string? unitWhereNone, string unitSource = "the row of units")
    {
        var text = header.Trim();
        if (text.StartsWith(QualityWords.HeaderBegin, StringComparison.OrdinalIgnoreCase))
            return new(header, FlowKind.Unknown, "", ColumnKind.QualityWords, $"column {number} \"{text}\" is read as words on another column's values because its header says so") { Number = number };
        var unit = UnitOf(ref text, unitRow, unitSource, out var unitReason);
        var words = Split(text);
        var named = text.Length == 0 ? $"column {number}" : $"column {number} \"{header.Trim()}\"";

        if (Any(words, ["battery full", "full", "curtailed", "export limited"]) && unit is null)
            return new(header, FlowKind.Unknown, "", ColumnKind.CensoredFlag, $"{named} is read as a mark (1: the plant could have made more) because of its words") { Number = number };
        var noEnergy = Array.Find(NoEnergyWords, w => Has(words, w));
        if (noEnergy is not null || unit is { IsActiveEnergy: false } || text.Contains('%'))
            return new(header, FlowKind.Unknown, unit?.Name ?? "", ColumnKind.Ignored, $"{named} is left out because {(noEnergy is null ? $"{unit?.Name ?? "%"} is no active energy" : $"\"{noEnergy}\" is no energy")}") { Number = number };

        var idWord = unit is null ? Array.Find(NameWords, w => Has(words, w)) : null;
        if (idWord is not null)
            return new(header, FlowKind.Unknown, "", ColumnKind.Ignored, $"{named} is left out because \"{idWord}\" names something and counts nothing") { Number = number };

        if (unit is null && unitWhereNone is not null)
        {
            unit = EnergyUnit.Find(unitWhereNone) ?? throw Throw.UnknownUnit(unitWhereNone);
            unitReason = $"the user says {unit.Name} where the header names no unit";
        }
        var (flow, word) = FlowOf(text, words);
        var kind = unit is { IsPower: true } ? ColumnKind.Power : Any(words, CounterWords) ? ColumnKind.Counter
            : flow == FlowKind.Unknown && Any(words, NetWords) ? ColumnKind.Net : ColumnKind.Energy;
        var flowReason = flow != FlowKind.Unknown ? $"of the word \"{word}\""
            : word is not null ? $"\"{word}\" names several things, and a sum of other columns is not counted again"
            : "no word of its header names a flow";
        var device = flow == FlowKind.Unknown ? null : DeviceOf(words, word);
        var reason = $"{named} is read as {Name(flow)} in {unit?.Name ?? "an unknown unit"} because {flowReason} and because {unitReason}";
        return new(header, flow, unit?.Name ?? "", kind, reason) { Number = number, Device = device };
    }

    internal static string Name(FlowKind flow) => flow switch
    {
        FlowKind.BatteryCharge => "battery charge",
        FlowKind.BatteryDischarge => "battery discharge",
        FlowKind.Unknown => "an unknown flow",
        _ => flow.ToString().ToLowerInvariant(),
    };

    private static (FlowKind Flow, string? Word) FlowOf(string text, string[] words)
    {
        if (text.Contains('+')) return (FlowKind.Unknown, text);
        // In French a load curve.
        if (Has(words, "courbe de charge")) return (FlowKind.Use, "courbe de charge");
        foreach (var (flow, candidates) in FlowWords.Concat(FlowWordsOfOtherLanguages))
        {
            var word = Array.Find(candidates, w => Has(words, w));
            if (word is not null) return (flow, word);
        }
        return (FlowKind.Unknown, null);
    }

    private static EnergyUnit? UnitOf(ref string text, string? unitRow, string unitSource, out string reason)
    {
        reason = "neither its header nor a row of units names one";
        if (!string.IsNullOrWhiteSpace(unitRow) && EnergyUnit.Find(unitRow.Trim().Trim('(', ')', '[', ']')) is { } inRow)
        {
            reason = $"{unitSource} says {inRow.Name}";
            return inRow;
        }
        foreach (Match match in Bracketed().Matches(text))
        {
            if (EnergyUnit.Find(match.Groups["unit"].Value.Trim()) is not { } unit) continue;
            text = text.Remove(match.Index, match.Length).Trim();
            reason = $"its header says ({unit.Name})";
            return unit;
        }
        foreach (Match match in Word().Matches(text))
        {
            if (match.Length < 2 || EnergyUnit.Find(match.Value) is not { } unit) continue;
            text = text.Remove(match.Index, match.Length).Trim(' ', '_', '-', '/', ',');
            reason = $"its header says {unit.Name}";
            return unit;
        }
        // A lone w may also be the west; beside a word for power it is the unit.
        if (PowerInWatts().Match(text) is { Success: true } watts)
        {
            text = text.Remove(watts.Groups["unit"].Index, 1).Trim(' ', '_', '-', '/', ',');
            reason = "its header says W";
            return EnergyUnit.Find("W");
        }
        return null;
    }

    private static string? DeviceOf(string[] words, string? flowWord)
    {
        if (flowWord is null) return null;
        var used = flowWord.Split(' ');
        var rest = words.Where(w => !used.Contains(w, StringComparer.Ordinal) && w is not ("energy" or "total" or "grid" or "battery" or "in")).ToArray();
        return rest.Length == 0 ? null : string.Join(' ', rest);
    }

    private static string[] Split(string text) =>
        [.. Word().Matches(CamelHump().Replace(text, " ")).Select(m => m.Value.ToLowerInvariant())];

    private static bool Any(string[] words, string[] candidates) => Array.Exists(candidates, c => Has(words, c));

    private static bool Has(string[] words, string phrase)
    {
        var parts = phrase.Split(' ');
        for (var i = 0; i + parts.Length <= words.Length; i++)
            if (words.AsSpan(i, parts.Length).SequenceEqual(parts)) return true;
        return false;
    }

    [GeneratedRegex(@"[(\[](?<unit>[^()\[\]]*)[)\]]", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Bracketed();

    [GeneratedRegex(@"(power|leistung|puissance|potencia|potência|potenza|vermogen|effekt|moc)[ _-](?<unit>w)$", RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase, 1000)]
    private static partial Regex PowerInWatts();

    [GeneratedRegex(@"[\p{L}\d]+", RegexOptions.None, 1000)]
    private static partial Regex Word();

    [GeneratedRegex(@"(?<=[a-z])(?=[A-Z][a-z])", RegexOptions.None, 1000)]
    private static partial Regex CamelHump();
}
