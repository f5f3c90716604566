namespace SolarEconomics.Charts;

/// <summary>The typeface of charts and pages, carried along so that a picture looks the same on a machine that has not installed it.</summary>
/// <remarks>Atkinson Hyperlegible Next, variable weight 200 to 800, Latin letters; SIL Open Font License 1.1 (see <c>Fonts/LICENSE-OFL.txt</c>). The figures ask for it as
/// <c>Reading</c>, so that a page names the file itself.</remarks>
public static class ReadingFont
{
    /// <summary>Name under which figures ask for the typeface.</summary>
    public static string Family => "Reading";

    /// <summary>Opens the file (WOFF2).</summary>
    public static Stream Open() => Carried.Open("SolarEconomics.Charts.Fonts.reading.woff2");

    /// <summary>A rule for a style sheet that carries the whole file in itself.</summary>
    public static string FontFaceRule()
    {
        using var stream = Open();
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return $"@font-face {{ font-family: \"{Family}\"; font-weight: 200 800; src: url(data:font/woff2;base64,{Convert.ToBase64String(bytes.ToArray())}) format(\"woff2\"); }}";
    }
}
