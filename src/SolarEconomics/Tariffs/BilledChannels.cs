using System.Globalization;

namespace SolarEconomics;

/// <summary>The channels of one meter that a bill counts, sorted by what they count.</summary>
internal sealed record BilledChannels(IReadOnlyList<Channel> Import, IReadOnlyList<Channel> Export, IReadOnlyList<Channel> ControlledLoad)
{
    /// <summary>Channels of reactive energy taken; empty where none is metered.</summary>
    internal IReadOnlyList<Channel> Reactive { get; init; } = [];

    /// <summary>What was decided on the way, one sentence each.</summary>
    internal IReadOnlyList<string> Notes { get; init; } = [];

    /// <exception cref="RecordException">No import in the readings, several meters and none chosen, or a name that no channel has.</exception>
    internal static BilledChannels Of(Readings readings, string? meter, string? controlledLoad, bool controlledLoadIsPriced)
    {
        var import = BillColumn.Channels(readings, FlowKind.Import);
        var export = BillColumn.Channels(readings, FlowKind.Export);
        if (import.Count == 0) throw Throw.NoImportReadings(readings);
        var meters = import.Concat(export).Select(c => c.Meter).OfType<string>().Distinct(StringComparer.Ordinal).ToList();
        if (meter is not null)
        {
            if (!meters.Contains(meter, StringComparer.OrdinalIgnoreCase)) throw Throw.UnknownMeter(meter, meters);
            import = [.. import.Where(c => string.Equals(c.Meter, meter, StringComparison.OrdinalIgnoreCase))];
            export = [.. export.Where(c => string.Equals(c.Meter, meter, StringComparison.OrdinalIgnoreCase))];
            if (import.Count == 0) throw Throw.NoImportReadings(readings);
        }
        else if (meters.Count > 1) throw Throw.SeveralMeters(meters);
        var apart = controlledLoad is not null ? Named(import, controlledLoad) : controlledLoadIsPriced ? Likely(import, export) : [];
        var reactive = readings.Channels.Where(c => IsReactive(c) && c.Count > 0 && (meter is null || string.Equals(c.Meter, meter, StringComparison.OrdinalIgnoreCase))).ToList();
        if (apart.Count == 0) return new BilledChannels(import, export, []) { Reactive = reactive };
        var names = DayWords.And([.. apart.Select(c => $"\"{c.Name}\"")]);
        return new BilledChannels([.. import.Except(apart)], export, apart)
        {
            Reactive = reactive,
            Notes = [controlledLoad is not null ? $"{names} is billed as the controlled load." : $"{names} is billed as the controlled load: the tariff prices one, and this channel takes energy without sending any. Name another channel where that is wrong."],
        };
    }

    private static List<Channel> Named(IReadOnlyList<Channel> import, string name)
    {
        var found = import.Where(c => string.Equals(c.Name, name, StringComparison.OrdinalIgnoreCase)
            || string.Equals(Suffix(c), name, StringComparison.OrdinalIgnoreCase)).ToList();
        return found.Count > 0 ? found : throw Throw.UnknownChannel(name, [.. import.Select(c => c.Name)]);
    }

    /// <summary>A second element of the same meter that sends nothing, or a channel that says so itself.</summary>
    private static List<Channel> Likely(IReadOnlyList<Channel> import, IReadOnlyList<Channel> export)
    {
        var said = import.Where(c => c.Name.Contains("controlled", StringComparison.OrdinalIgnoreCase)).ToList();
        if (said.Count > 0 && said.Count < import.Count) return said;
        var elements = export.Select(Element).ToList();
        var apart = import.Where(c => Element(c) is > 1 and { } element && !elements.Contains(element)).ToList();
        return apart.Count < import.Count ? apart : [];
    }

    /// <summary>Reactive energy that the home takes: K in a suffix such as K1, or "export" in a name, is what it sends.</summary>
    private static bool IsReactive(Channel channel) => string.Equals(channel.Unit, "kVArh", StringComparison.OrdinalIgnoreCase)
        && !channel.Name.Contains("export", StringComparison.OrdinalIgnoreCase) && !(channel.Clock is not null && Suffix(channel).StartsWith('K'));

    private static string Suffix(Channel channel) => channel.Name[(channel.Name.LastIndexOf(' ') + 1)..];

    /// <summary>The number in a suffix such as E2; none where the name ends otherwise.</summary>
    private static int? Element(Channel channel) => channel.Clock is not null && Suffix(channel) is { Length: 2 } suffix
        && int.TryParse(suffix.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}
