using System.Globalization;
using System.Text;

namespace SolarEconomics;

/// <summary>Names of months and weekdays as tables write them: English, German, French, Spanish, Italian, Dutch, Portuguese, Swedish, Danish, Norwegian, Polish.</summary>
/// <remarks>Letters are compared without case and without the marks above and below them.</remarks>
internal static class MonthNames
{
    private const int Longest = 20;

    private static readonly string[] Months =
    [
        "jan january januar janner janvier janv enero ene gennaio gen januari janeiro stycznia styczen sty",
        "feb february februar febr fevrier fevr fev febrero febbraio februari fevereiro lutego luty lut",
        "mar march marz mars marzo maart mrt marco marca marzec marts",
        "apr april avril avr abril abr aprile kwietnia kwiecien kwi",
        "may mai mayo maggio mag mei maio maj maja",
        "jun june juni juin junio giugno giu junho czerwca czerwiec cze",
        "jul july juli juillet juil julio luglio lug julho lipca lipiec lip",
        "aug august aout agosto ago augustus augusti sierpnia sierpien sie",
        "sep sept september septembre septiembre settembre set setembro wrzesnia wrzesien wrz",
        "oct october oktober okt octobre octubre ottobre ott outubro out pazdziernika pazdziernik paz",
        "nov november novembre noviembre novembro listopada listopad lis",
        "dec december dezember dez decembre diciembre dic dicembre dezembro desember des grudnia grudzien gru",
    ];

    private const string Weekdays =
        "mo mon monday montag lun lundi lunes lunedi ma maandag mandag mandag seg segunda pon poniedzialek man "
        + "tu tue tues tuesday di dienstag mardi mar martes martedi dinsdag tirsdag ter terca wt wtorek tis tisdag "
        + "we wed wednesday mi mittwoch mercredi mer miercoles mie mercoledi wo woensdag onsdag ons qua quarta sr sroda "
        + "th thu thur thurs thursday do donnerstag jeu jeudi jue jueves gio giovedi donderdag torsdag tor qui quinta czw czwartek "
        + "fr fri friday freitag ven vendredi vie viernes venerdi vr vrijdag fredag fre sex sexta pt piatek "
        + "sa sat saturday samstag sonnabend sam samedi sab sabado sabato za zaterdag lordag lor sob sobota "
        + "su sun sunday so sonntag dim dimanche dom domingo domenica zo zondag sondag son nd niedziela";

    private static readonly Dictionary<string, int> ByName =
        Months.SelectMany((names, m) => names.Split(' ').Select(n => (Name: n, Month: m + 1))).ToDictionary(n => n.Name, n => n.Month, StringComparer.Ordinal);

    private static readonly HashSet<string> DayNames = new(Weekdays.Split(' '), StringComparer.Ordinal);

    /// <summary>The month of a name, 1 to 12.</summary>
    internal static bool TryFind(ReadOnlySpan<char> word, out int month)
    {
        month = 0;
        return word.Length is >= 3 and <= Longest && ByName.TryGetValue(Bare(word), out month);
    }

    internal static bool IsWeekday(ReadOnlySpan<char> word) => word.Length is >= 2 and <= Longest && DayNames.Contains(Bare(word));

    /// <summary>Small letters without marks: Mär is mar.</summary>
    private static string Bare(ReadOnlySpan<char> word)
    {
        var small = word.ToString().ToLowerInvariant();
        if (Ascii.IsValid(small)) return small;
        var bare = new StringBuilder(small.Length);
        foreach (var letter in small.Normalize(NormalizationForm.FormD))
            if (CharUnicodeInfo.GetUnicodeCategory(letter) != UnicodeCategory.NonSpacingMark) bare.Append(letter == 'ø' ? 'o' : letter == 'ł' ? 'l' : letter);
        return bare.ToString();
    }
}
