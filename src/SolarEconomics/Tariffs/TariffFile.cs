using System.Text.Json;
using NodaTime;
using NodaTime.Text;

namespace SolarEconomics;

/// <summary>Reads our own tariff file.</summary>
internal sealed partial class TariffFile
{
    internal const int Version = 1;
    internal const string Kind = "a tariff file or a regulator's energy plan";
    private const string Schema = "SolarEconomics.Tariffs.tariff.schema.json";
    private static readonly Lazy<JsonRules> Rules = new(() => new JsonRules(Schema));
    private readonly CheckedJson _json;
    private readonly List<Problem> _problems = [];
    private readonly string _path;
    private bool _namesHolidays;

    // Whether the version being read holds all that the file says of it, and which versions do not.
    private readonly HashSet<int> _incomplete;
    private readonly JsonElement _root;
    private bool _isWhole = true;

    private TariffFile(CheckedJson json, JsonElement root, string path, HashSet<int> incomplete) => (_json, _root, _path, _incomplete) = (json, root, path, incomplete);

    /// <exception cref="RecordException">Anything in the file is wrong; every mistake is in the message.</exception>
    internal static TariffHistory Read(CheckedJson json, string path)
    {
        if (json.Root.ValueKind == JsonValueKind.Object && json.Root.TryGetProperty("version", out var version)
            && version.ValueKind == JsonValueKind.Number && version.TryGetInt32(out var number) && number > Version)
            throw Throw.JsonNewer(path, number, Version);
        var refused = new List<string>();
        var problems = json.Judge(Rules.Value, refused);
        if (TariffFileRest.Of(json.Root, refused) is not { } rest) throw Throw.JsonMistakes(path, problems);
        // What the schema refuses is left out, so that the mistakes of the rest stand in the same message.
        var file = new TariffFile(json, rest, path, [.. refused.Select(TariffFileRest.VersionOf).OfType<int>()]);
        var versions = file.Versions();
        var growth = file.Growth();
        json.ThrowIfAny(CheckedJson.InFileOrder([.. problems, .. file._problems]));
        return growth(TariffHistory.Of(versions));
    }

    private Func<TariffHistory, TariffHistory> Growth()
    {
        if (!_root.TryGetProperty("growth", out var growth)) return history => history;
        var until = Day(growth, "/growth", "until");
        return history => history.GrowingBy(Decimal(growth, "import") ?? 0, Decimal(growth, "export") ?? 0, Decimal(growth, "supply") ?? 0, until);
    }

    private List<Tariff> Versions()
    {
        var currency = Known("currency", code => Currency.Of(code).Code) ?? "EUR";
        var zone = Known("zone", Require.Zone);
        var versions = new List<Tariff>();
        foreach (var (at, pointer, index) in _root.GetProperty("tariffs").EnumerateArray().Select((t, i) => (t, FormattableString.Invariant($"/tariffs/{i}"), i)))
        {
            if (at.ValueKind == JsonValueKind.Null) continue;
            _isWhole = !_incomplete.Contains(index);
            var before = _problems.Count;
            var read = Version1(at, pointer, currency, zone);
            var isRead = _isWhole && _problems.Count == before;
            foreach (var mistake in TariffCheck.Mistakes(read).Where(m => (isRead || !m.IsOfHours) && (_isWhole || !m.ComparesParts)))
                _problems.Add(_json.At(pointer + "/" + mistake.Place, $"in \"{read.Name}\" {mistake.Found}", mistake.Expected));
            if (isRead && versions.Find(v => v.From == read.From) is { } twin)
                _problems.Add(_json.At(pointer + "/from", $"\"{read.Name}\" from the same day as \"{twin.Name}\"", "one version from each day; correct a date or leave one out"));
            versions.Add(read);
        }
        return versions;
    }

    /// <summary>A name at the top of the file that stands for something known; nothing where it is left out or not known, which is a problem.</summary>
    private T? Known<T>(string field, Func<string, T> find) where T : class
    {
        if (!_root.TryGetProperty(field, out var name)) return null;
        try
        {
            return find(name.GetString()!);
        }
        catch (UnknownNameException e)
        {
            Wrong("/" + field, e);
            return null;
        }
    }

    private Tariff Version1(JsonElement at, string pointer, string currency, DateTimeZone? zone)
    {
        var tariff = Tariff.Named(at.GetProperty("name").GetString()!, currency, Day(at, pointer, "from")) with { Zone = zone };
        if (at.TryGetProperty("tax", out var tax)) tariff = tariff.Taxed(tax.GetDecimal());
        if (at.TryGetProperty("rounding", out var rounding)) tariff = tariff with { Rounding = Rounding(rounding) };
        tariff = tariff with { Seasons = [.. Items(at, pointer, "seasons").Select(s => Season(s.Item, s.Place))] };
        _namesHolidays = at.TryGetProperty("holidays", out _) || at.TryGetProperty("holidaysOf", out _);
        tariff = Terms(tariff with { Holidays = Holidays(at, pointer) }, at);
        return Parts(tariff, at, pointer);
    }

    private RateWindow Window(JsonElement at, string pointer)
    {
        var season = at.TryGetProperty("season", out var name) ? name.GetString() : null;
        var days = TariffDays.EveryDay;
        if (at.TryGetProperty("days", out var named) && !_namesHolidays && _isWhole && named.EnumerateArray().Any(d => d.GetString() == "holidays"))
            _problems.Add(_json.At(pointer + "/days", "a rate for holidays", "the tariff to name them, in \"holidays\" or \"holidaysOf\""));
        if (at.TryGetProperty("days", out var kinds)) days = kinds.EnumerateArray().Aggregate(TariffDays.None, (all, k) => all | Kinds(k.GetString()!));
        HourSpan[] hours = [HourSpan.WholeDay];
        if (at.TryGetProperty("hours", out var spans))
            hours = [.. spans.EnumerateArray().Select((h, i) => Hours(h.GetString()!, FormattableString.Invariant($"{pointer}/hours/{i}")))];
        return new RateWindow(season, days, hours);
    }

    private HourSpan Hours(string text, string pointer)
    {
        if (!HourSpan.TryParse(text, out var hours))
            _problems.Add(_json.At(pointer, $"\"{text}\"", "a start and another end, such as \"17:00-19:00\", between 00:00 and 24:00"));
        return hours;
    }

    private TariffSeason Season(JsonElement at, string pointer) =>
        new(at.GetProperty("name").GetString()!, DayOfYear(at, pointer, "from"), DayOfYear(at, pointer, "until"));

    private AnnualDate DayOfYear(JsonElement at, string pointer, string field)
    {
        var text = at.GetProperty(field).GetString()!;
        var parsed = AnnualDatePattern.Iso.Parse(text);
        if (parsed.Success) return parsed.Value;
        _problems.Add(_json.At(pointer + "/" + field, $"\"{text}\"", "a month and day that exist, such as \"11-01\""));
        return new AnnualDate(1, 1);
    }

    private LocalDate Day(JsonElement at, string pointer, string field) => Date(at.GetProperty(field).GetString()!, pointer + "/" + field);

    private LocalDate Date(string text, string pointer)
    {
        var parsed = LocalDatePattern.Iso.Parse(text);
        if (parsed.Success) return parsed.Value;
        _problems.Add(_json.At(pointer, $"\"{text}\"", "a day that exists, such as \"2024-03-01\""));
        return new LocalDate(1, 1, 1);
    }

    private static BillRounding Rounding(JsonElement at) => new(
        at.TryGetProperty("mode", out var mode) ? mode.GetString() switch { "half even" => RoundingMode.HalfEven, "towards zero" => RoundingMode.TowardsZero, _ => RoundingMode.HalfUp } : RoundingMode.HalfUp,
        at.TryGetProperty("each", out var each) ? each.GetString() switch { "bill" => RoundingPlace.Bill, "nowhere" => RoundingPlace.Nowhere, _ => RoundingPlace.Line } : RoundingPlace.Line,
        at.TryGetProperty("digits", out var digits) ? (int)digits.GetDecimal() : null);

    private static TariffDays Kinds(string word) => word switch
    {
        "every day" => TariffDays.EveryDay,
        _ => Enum.Parse<TariffDays>(word, ignoreCase: true),
    };

    /// <summary>Takes "Found x, expected y." apart, so that the place can stand in front of it.</summary>
    private void Wrong(string pointer, UnknownNameException e)
    {
        const string found = "Found ";
        const string expected = ", expected ";
        var at = e.Message.IndexOf(expected, StringComparison.Ordinal);
        _problems.Add(_json.At(pointer, e.Message[found.Length..at], e.Message[(at + expected.Length)..].TrimEnd('.')));
    }
}
