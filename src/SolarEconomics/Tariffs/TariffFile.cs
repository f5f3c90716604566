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

    private TariffFile(CheckedJson json, string path) => (_json, _path) = (json, path);

    /// <exception cref="RecordException">Anything in the file is wrong; every mistake is in the message.</exception>
    internal static TariffHistory Read(CheckedJson json, string path)
    {
        if (json.Root.ValueKind == JsonValueKind.Object && json.Root.TryGetProperty("version", out var version)
            && version.ValueKind == JsonValueKind.Number && version.TryGetInt32(out var number) && number > Version)
            throw Throw.JsonNewer(path, number, Version);
        json.ThrowIfAny(json.Judge(Rules.Value));
        var file = new TariffFile(json, path);
        var versions = file.Versions();
        json.ThrowIfAny(file._problems);
        return file.Growing(TariffHistory.Of(versions));
    }

    private TariffHistory Growing(TariffHistory history)
    {
        if (!_json.Root.TryGetProperty("growth", out var growth)) return history;
        var until = Day(growth, "/growth", "until");
        _json.ThrowIfAny(_problems);
        return history.GrowingBy(Decimal(growth, "import") ?? 0, Decimal(growth, "export") ?? 0, Decimal(growth, "supply") ?? 0, until);
    }

    private List<Tariff> Versions()
    {
        var currency = "EUR";
        try
        {
            currency = Currency.Of(_json.Root.GetProperty("currency").GetString()!).Code;
        }
        catch (UnknownNameException e)
        {
            Wrong("/currency", e);
        }
        DateTimeZone? zone = null;
        if (_json.Root.TryGetProperty("zone", out var name))
        {
            try
            {
                zone = Require.Zone(name.GetString()!);
            }
            catch (UnknownNameException e)
            {
                Wrong("/zone", e);
            }
        }
        var versions = new List<Tariff>();
        var index = 0;
        foreach (var tariff in _json.Root.GetProperty("tariffs").EnumerateArray())
        {
            var pointer = FormattableString.Invariant($"/tariffs/{index++}");
            var read = Version1(tariff, pointer, currency, zone);
            versions.Add(read);
            if (_problems.Count == 0)
                foreach (var mistake in TariffCheck.Mistakes(read))
                    _problems.Add(_json.At(pointer + "/" + mistake.Place, $"in \"{read.Name}\" {mistake.Found}", mistake.Expected));
        }
        return versions;
    }

    private Tariff Version1(JsonElement at, string pointer, string currency, DateTimeZone? zone)
    {
        var tariff = Tariff.Named(at.GetProperty("name").GetString()!, currency, Day(at, pointer, "from")) with { Zone = zone };
        if (at.TryGetProperty("tax", out var tax)) tariff = tariff.Taxed(tax.GetDecimal());
        if (at.TryGetProperty("rounding", out var rounding)) tariff = tariff with { Rounding = Rounding(rounding) };
        if (at.TryGetProperty("seasons", out var seasons))
            tariff = tariff with { Seasons = [.. seasons.EnumerateArray().Select((s, i) => Season(s, FormattableString.Invariant($"{pointer}/seasons/{i}")))] };
        _namesHolidays = at.TryGetProperty("holidays", out _) || at.TryGetProperty("holidaysOf", out _);
        tariff = Terms(tariff with { Holidays = Holidays(at, pointer) }, at);
        return Parts(tariff, at, pointer);
    }

    private RateWindow Window(JsonElement at, string pointer)
    {
        var season = at.TryGetProperty("season", out var name) ? name.GetString() : null;
        var days = TariffDays.EveryDay;
        if (at.TryGetProperty("days", out var named) && !_namesHolidays && named.EnumerateArray().Any(d => d.GetString() == "holidays"))
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
