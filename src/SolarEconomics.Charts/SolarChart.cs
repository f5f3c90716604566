using Plotly.NET;

namespace SolarEconomics.Charts;

/// <summary>A chart of a result: a figure as data, the finding in words, and the table behind the picture.</summary>
/// <remarks>Immutable and thread-safe. The figure is made when first asked for. All text is plain: whoever writes tags escapes it.</remarks>
public sealed class SolarChart
{
    private readonly Func<ChartFrame, GenericChart> _draw;
    private readonly Lazy<string> _figureJson;

    internal SolarChart(string name, string kind, Finding finding, FindingTable table, ChartFrame frame, Func<ChartFrame, GenericChart> draw)
    {
        Name = name;
        Kind = kind;
        Finding = finding;
        Table = table;
        Frame = frame;
        _draw = draw;
        _figureJson = new Lazy<string>(() => FigureText.Write(_draw(Frame)));
    }

    /// <summary>A few lower-case words joined by hyphens, for file names: <c>cash-curve</c>.</summary>
    public string Name { get; }

    /// <summary>What kind of picture it is, for people who do not see it: <c>Line chart</c>.</summary>
    public string Kind { get; }

    /// <summary>Heading.</summary>
    public string Title => Frame.Title;

    /// <summary>The finding that the picture shows, with the notes and cautions that stand on it.</summary>
    public Finding Finding { get; }

    /// <summary>The numbers behind the picture, with units, formatted for people.</summary>
    public FindingTable Table { get; }

    /// <summary>Size of the figure.</summary>
    public ChartPreset Preset => Frame.Preset;

    /// <summary>Colours of the figure.</summary>
    public ChartTheme Theme => Frame.Theme;

    /// <summary>The finding as one paragraph, to stand under the picture and for plain text.</summary>
    public string Words => Sentences.Join(Finding);

    /// <summary>What a person who does not see the picture is told: kind, heading and finding.</summary>
    public string AltText => $"{Kind}: {Sentences.Ended(Title)} {Words}";

    /// <summary>The figure as JSON: one object with plotly's <c>data</c>, <c>layout</c> and <c>config</c>.</summary>
    /// <remarks>The same on every machine and under every culture. Pure ASCII without angle brackets, so that it can stand inside a script element.
    /// <c>layout.meta.tokens</c> names each colour in light and dark: exchanging them recolours the figure (see <see cref="ChartScript"/>).</remarks>
    public string FigureJson => _figureJson.Value;

    internal ChartFrame Frame { get; }

    /// <summary>Wraps a figure drawn with Plotly.NET, so that it is shown, exported and said like the library's own charts.</summary>
    /// <param name="drawing">The figure. Its own size and colours are kept.</param>
    /// <param name="title">Heading.</param>
    /// <param name="words">The finding in one to three sentences; who does not see the picture reads these.</param>
    public static SolarChart Of(GenericChart drawing, string title, string words)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        ArgumentException.ThrowIfNullOrWhiteSpace(title);
        ArgumentException.ThrowIfNullOrWhiteSpace(words);
        return new SolarChart("chart", "Chart", new Finding("", words), new FindingTable(title, [], []),
            ChartFrame.Plain(title), _ => drawing);
    }

    /// <summary>The same chart in another size.</summary>
    /// <param name="preset">Size.</param>
    public SolarChart For(ChartPreset preset) => new(Name, Kind, Finding, Table, Frame with { Preset = preset }, _draw);

    /// <summary>The same chart in other colours.</summary>
    /// <param name="theme">Colours.</param>
    public SolarChart In(ChartTheme theme) => new(Name, Kind, Finding, Table, Frame with { Theme = theme }, _draw);

    /// <summary>The figure as an object of Plotly.NET, to draw further on; it carries no words.</summary>
    public GenericChart ToPlotly() => _draw(Frame);

    /// <summary>The chart as one page of HTML that works with no network: script, typeface, table and words stand inside it once.</summary>
    /// <returns>About 3.7 MB of text. The page follows the reader's light or dark setting and prints in light.</returns>
    public string ToHtml() => ChartPage.Write(this);

    /// <summary>Writes <see cref="ToHtml"/> to a file, replacing one that is there only once the new one is whole.</summary>
    /// <param name="path">File to write, for example <c>payback.html</c>; its folder is made where it is missing.</param>
    public void SaveHtml(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        var target = Path.GetFullPath(path);
        Directory.CreateDirectory(Path.GetDirectoryName(target)!);
        var part = target + ".part";
        File.WriteAllText(part, ToHtml());
        File.Move(part, target, overwrite: true);
    }

    /// <summary>The finding, as plain text.</summary>
    public override string ToString() => $"{Sentences.Ended(Title)} {Words}";
}
