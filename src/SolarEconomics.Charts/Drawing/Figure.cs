using System.Globalization;
using Plotly.NET;

namespace SolarEconomics.Charts;

/// <summary>Collects traces, labels and axes of one chart and hands them over as a Plotly.NET figure.</summary>
internal sealed class Figure(ChartFrame frame, Room room)
{
    /// <summary>Numbers on a money axis, at most.</summary>
    internal const int MostTicks = 6;

    private readonly List<Trace> _traces = [];
    private readonly List<Fields> _labels = [];
    private readonly List<Fields> _shapes = [];
    private readonly Fields _axes = [];

    internal ChartFrame Frame => frame;

    internal ChartTheme Theme => frame.Theme;

    internal ChartPreset Preset => frame.Preset;

    /// <summary>Width of the plot, as the preset has it.</summary>
    internal double PlotWidthPx => FrameLayout.PlotSize(frame, room).Width;

    /// <summary>Height of the plot.</summary>
    internal double PlotHeightPx => FrameLayout.PlotSize(frame, room).Height;

    /// <summary>Distance of a label from its point.</summary>
    internal double LabelGapPx => Preset.LinePx * 2.6;

    internal void Add(string type, Fields fields)
    {
        var trace = new Trace(type);
        foreach (var (name, value) in fields)
        {
            trace.SetProperty(name, value);
        }

        _traces.Add(trace);
    }

    internal void Axis(string name, Fields fields)
    {
        var all = new Fields
        {
            ["zeroline"] = false,
            ["automargin"] = false,
        };
        if (fields.GetValueOrDefault("showticklabels") is not false)
        {
            all["tickfont"] = Font(Preset.SmallTextPx, Theme.Soft);
        }

        foreach (var (key, value) in fields)
        {
            all[key] = value;
        }

        _axes[name] = all;
    }

    /// <summary>A label at data coordinates; the words say which way it leans from its point.</summary>
    internal void Label(string text, object x, double y, string side, bool strong, string? name = null)
    {
        var gap = LabelGapPx;
        var left = side.Contains("left", StringComparison.Ordinal);
        var below = side.Contains("below", StringComparison.Ordinal);
        _labels.Add(new Fields
        {
            ["name"] = name ?? "label",
            ["text"] = strong ? "<b>" + Sentences.Escape(text) + "</b>" : Sentences.Escape(text),
            ["x"] = x,
            ["y"] = y,
            ["showarrow"] = false,
            ["xanchor"] = left ? "right" : "left",
            ["yanchor"] = below ? "top" : "bottom",
            ["align"] = left ? "right" : "left",
            ["xshift"] = left ? -gap : gap,
            ["yshift"] = below ? -gap : gap,
            ["font"] = Font(strong ? Preset.TextPx : Preset.SmallTextPx, strong ? Theme.Ink : Theme.Soft),
        });
    }

    /// <summary>The unit of the value axis, level above the plot, so that nobody has to tilt the head.</summary>
    internal void Unit(string text, int rowsBelow = 0) => Annotate(new Fields
    {
        ["name"] = "unit", ["text"] = Sentences.Escape(text), ["showarrow"] = false, ["align"] = "left", ["borderpad"] = 0,
        ["xref"] = "paper", ["yref"] = "paper", ["x"] = 0, ["y"] = 1, ["xanchor"] = "left", ["yanchor"] = "bottom",
        ["yshift"] = Math.Round(Preset.SmallTextPx * (0.6 + 2.0 * rowsBelow)), ["font"] = Font(Preset.SmallTextPx, Theme.Soft),
    });

    internal void Annotate(Fields fields) => _labels.Add(fields);

    internal void Shape(Fields fields) => _shapes.Add(fields);

    internal static Fields Font(int sizePx, string colour) => new() { ["size"] = sizePx, ["color"] = colour };

    internal GenericChart Finish(Fields extra)
    {
        var layout = new Layout();
        foreach (var (name, value) in FrameLayout.Of(frame, _labels, _shapes, room).Concat(_axes).Concat(extra))
        {
            layout.SetProperty(name, value);
        }

        var config = new Config();
        foreach (var (name, value) in ConfigFields())
        {
            config.SetProperty(name, value);
        }

        return GenericChart.setConfig(config, GenericChart.setLayout(layout, GenericChart.ofTraceObjects<IEnumerable<Trace>>(false, _traces)));
    }

    /// <summary>No tool bar, no link to anywhere; months as the frame's culture names them.</summary>
    private Fields ConfigFields()
    {
        var months = frame.Culture.DateTimeFormat;
        return new Fields
        {
            ["responsive"] = Preset.IsResponsive,
            ["displayModeBar"] = false,
            ["displaylogo"] = false,
            ["scrollZoom"] = false,
            ["locale"] = "reader",
            ["locales"] = new Fields
            {
                ["reader"] = new Fields
                {
                    ["dictionary"] = new Fields(),
                    ["format"] = new Fields
                    {
                        ["months"] = months.MonthNames.Take(12).ToArray(), ["shortMonths"] = months.AbbreviatedMonthNames.Take(12).ToArray(),
                    },
                },
            },
        };
    }

    /// <summary>An axis of money: each number on it carries the currency.</summary>
    internal void MoneyAxis(string name, Currency currency, double low, double high)
    {
        var ticks = Ticks.Between(low, high, MostTicks);
        var fields = new Fields
        {
            ["range"] = new[] { Fields.Round(low), Fields.Round(high) },
            ["tickvals"] = ticks,
            ["ticktext"] = Ticks.Words(ticks, currency, frame.Culture),
            ["fixedrange"] = true,
        };
        ZeroLine(fields);
        Axis(name, fields);
    }

    /// <summary>Zero is the line that everything is judged by.</summary>
    internal void ZeroLine(Fields axis)
    {
        if (axis.GetValueOrDefault("showgrid") is not false)
        {
            axis["gridcolor"] = Theme.Line;
        }

        axis["zeroline"] = true;
        axis["zerolinecolor"] = Theme.Ink;
        axis["zerolinewidth"] = Math.Round(Preset.LinePx * 0.4, 1);
    }

    internal static string UnitOf(Money money) =>
        string.Create(CultureInfo.InvariantCulture, $"{money.Currency.Sign}, {(money.Basis.IsNominal ? "money of the day" : money.Basis.ToString())}");
}
