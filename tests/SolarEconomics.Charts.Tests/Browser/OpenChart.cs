using System.Text.Json;
using Microsoft.Playwright;

namespace SolarEconomics.Charts.Tests;

/// <summary>An exported chart in a browser.</summary>
internal sealed class OpenChart(IPage page, string file) : IAsyncDisposable
{
    internal IPage Page => page;

    internal List<string> Requests { get; } = [];

    internal List<string> Complaints { get; } = [];

    internal Uri Address => new(file);

    /// <summary>Draws another figure in a place of the preset's own size.</summary>
    internal Task Draw(SolarChart chart) => page.EvaluateAsync(
        """
        async ([text, look, width]) => {
          document.querySelector('main').style.cssText = 'max-width:none;padding:0;border:0';
          document.body.style.padding = '0';
          const place = document.getElementById('chart');
          Plotly.purge(place);
          place.style.width = width + 'px';
          await solarChart.draw(place, JSON.parse(text), look);
        }
        """, new object[] { chart.FigureJson, chart.Theme.Name, chart.Preset.WidthPx });

    /// <summary>What plotly's own schema holds against a figure; empty where nothing.</summary>
    internal Task<string[]> Objections(SolarChart chart) => page.EvaluateAsync<string[]>(
        """text => { const f = JSON.parse(text); return (Plotly.validate(f.data, f.layout) || []).map(o => o.msg); }""", chart.FigureJson);

    /// <summary>All visible texts of the picture with their boxes, counted from its upper left corner.</summary>
    internal async Task<IReadOnlyList<TextBox>> Texts()
    {
        var json = await page.EvaluateAsync<string>(
            """
            () => {
              const corner = document.querySelector('#chart .main-svg').getBoundingClientRect();
              const texts = [...document.querySelectorAll('#chart .main-svg text')].filter(t => t.textContent.trim() && getComputedStyle(t).visibility !== 'hidden');
              return JSON.stringify(texts.map(t => {
                const b = t.getBoundingClientRect();
                return { Text: t.textContent, Left: b.left - corner.left, Top: b.top - corner.top, Right: b.right - corner.left, Bottom: b.bottom - corner.top,
                         SizePx: parseFloat(getComputedStyle(t).fontSize), Width: corner.width, Height: corner.height };
              }).filter(b => b.Right > b.Left));
            }
            """);
        return JsonSerializer.Deserialize<List<TextBox>>(json)!;
    }

    /// <summary>Makes a picture as the program does.</summary>
    internal async Task<byte[]> Picture(SolarChart chart)
    {
        var address = await page.EvaluateAsync<string>(
            "([text, look, w, h, font]) => solarChart.picture(JSON.parse(text), look, 'png', w, h, font)",
            new object[] { chart.FigureJson, chart.Theme.Name, chart.Preset.WidthPx, chart.Preset.HeightPx, ReadingFont.FontFaceRule() });
        return Convert.FromBase64String(address[(address.IndexOf(',', StringComparison.Ordinal) + 1)..]);
    }

    public async ValueTask DisposeAsync()
    {
        await page.Context.CloseAsync();
        File.Delete(file);
    }
}

/// <summary>A text of a picture and its box. Unit: pixels.</summary>
internal sealed record TextBox(string Text, double Left, double Top, double Right, double Bottom, double SizePx, double Width, double Height)
{
    internal bool IsInside => Left >= -0.5 && Top >= -0.5 && Right <= Width + 0.5 && Bottom <= Height + 0.5;

    /// <summary>Whether two texts cover each other by more than a line's own air.</summary>
    internal bool Covers(TextBox other) =>
        Math.Min(Right, other.Right) - Math.Max(Left, other.Left) > 2 && Math.Min(Bottom, other.Bottom) - Math.Max(Top, other.Top) > Math.Min(SizePx, other.SizePx) * 0.35;
}
