using Plotly.NET;

namespace SolarEconomics.Charts;

/// <summary>At which pairs of two inputs an amount is just 0, and on which side of them it gains.</summary>
public static class BreakEvenChart
{
    /// <summary>Draws a break-even line: the pairs found as points, joined where each step has one; the ground that gains filled; and where the two inputs stand now.</summary>
    /// <param name="line">The line; at least one step.</param>
    /// <param name="options">Choices; the default draws for the notebook page.</param>
    /// <remarks>Between two steps the line is drawn straight. A line without a point is drawn too: which side all of it lies on is an answer.</remarks>
    public static SolarChart Chart(this BreakEvenLine line, BreakEvenChartOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(line);
        options ??= new BreakEvenChartOptions();
        var finding = line.Say(options.Culture);
        var pairs = finding.Tables[0];
        // The axes' words say the units of both columns.
        var table = pairs with { Columns = [new InputAxis(line.Across, line.Currency, options.Culture).Words, new InputAxis(line.Solved, line.Currency, options.Culture).Words] };
        return new SolarChart("break-even", "Line chart", finding, table,
            ChartFrame.From(options, pairs.Caption, finding, "Solved at each point; between them the line is drawn straight."),
            frame => Draw(line, options.FillsGains, frame));
    }

    private static GenericChart Draw(BreakEvenLine line, bool fills, ChartFrame frame)
    {
        var (theme, preset) = (frame.Theme, frame.Preset);
        var (across, up) = (new InputAxis(line.Across, line.Currency, frame.Culture), new InputAxis(line.Solved, line.Currency, frame.Culture));
        var view = new BreakEvenView(line);
        var figure = new Figure(frame, new Room(up.Room, Below: 3.4));
        if (fills && view.KnowsSides)
        {
            foreach (var outline in view.Gaining())
            {
                figure.Add("scatter", new Fields(Trace("gains", "lines", outline, across, up))
                {
                    ["line"] = new Fields { ["width"] = 0 }, ["fill"] = "toself", ["fillcolor"] = theme.Line, ["hoverinfo"] = "skip",
                });
            }
        }

        foreach (var run in view.Lines())
        {
            figure.Add("scatter", new Fields(Trace("just 0", "lines", run, across, up))
            {
                ["line"] = new Fields { ["color"] = theme.Ink, ["width"] = Math.Round(preset.LinePx, 1) }, ["hoverinfo"] = "skip",
            });
        }

        Points(figure, line, across, up);
        var places = new BreakEvenPlaces(figure, line, view, across, up);
        Stands(figure, line, across, up, places);
        if (view.KnowsSides) Sides(figure, across, up, places);
        figure.Unit(up.Words);
        figure.Annotate(new Fields
        {
            ["name"] = "unit across", ["text"] = Sentences.Escape(across.Words), ["showarrow"] = false, ["align"] = "right", ["borderpad"] = 0,
            ["xref"] = "paper", ["yref"] = "paper", ["x"] = 1, ["y"] = 0, ["xanchor"] = "right", ["yanchor"] = "top",
            ["yshift"] = Math.Round(-preset.SmallTextPx * 1.9), ["font"] = Figure.Font(preset.SmallTextPx, theme.Soft),
        });
        figure.Axis("xaxis", new Fields(across.Fields) { ["showgrid"] = false });
        figure.Axis("yaxis", new Fields(up.Fields) { ["gridcolor"] = theme.Line });
        return figure.Finish(new Fields { ["showlegend"] = false, ["hovermode"] = "closest" });
    }

    /// <summary>What all traces begin with: pairs in the units of both axes.</summary>
    private static Fields Trace(string name, string mode, IReadOnlyList<(double Across, double Solved)> pairs, InputAxis across, InputAxis up) => new()
    {
        ["name"] = name, ["mode"] = mode, ["x"] = pairs.Select(p => across.At(p.Across)).ToArray(), ["y"] = pairs.Select(p => up.At(p.Solved)).ToArray(),
    };

    private static void Points(Figure figure, BreakEvenLine line, InputAxis across, InputAxis up)
    {
        if (line.Points.Count == 0) return;
        var culture = figure.Frame.Culture;
        figure.Add("scatter", new Fields(Trace("solved", "markers", line.Points, across, up))
        {
            ["marker"] = new Fields { ["color"] = figure.Theme.Ink, ["size"] = Math.Round(figure.Preset.LinePx * 2.4, 1) }, ["hoverinfo"] = "text",
            ["hovertext"] = line.Points.Select(p => (line.Jumps.Contains(p) ? "Changes its sign with " : "Just 0 with ") + Sentences.Escape(
                $"{line.Across.Input.Name} {line.Across.Input.InWords(p.Across, line.Currency, culture)}, {line.Solved.Input.Name} {line.Solved.Input.InWords(p.Solved, line.Currency, culture)}")).ToArray(),
        });
    }

    /// <summary>In words on each side what it means, so that the filling need not be known.</summary>
    private static void Sides(Figure figure, InputAxis across, InputAxis up, BreakEvenPlaces places)
    {
        foreach (var (gains, word) in new[] { (true, "gains"), (false, "loses") })
        {
            if (places.Middle(word, gains) is not { } at) continue;
            figure.Annotate(new Fields
            {
                ["name"] = "side", ["text"] = word, ["showarrow"] = false, ["borderpad"] = 0, ["x"] = across.At(at.Across), ["y"] = up.At(at.Solved),
                ["xanchor"] = "center", ["yanchor"] = "middle", ["font"] = Figure.Font(figure.Preset.TextPx, figure.Theme.Ink),
            });
        }
    }

    /// <summary>Where both inputs stand; outside the picture the words alone say it.</summary>
    private static void Stands(Figure figure, BreakEvenLine line, InputAxis across, InputAxis up, BreakEvenPlaces places)
    {
        if (Now(line) is not { } now) return;
        const string Words = "as it stands";
        var culture = figure.Frame.Culture;
        figure.Add("scatter", new Fields(Trace(Words, "markers", [now], across, up))
        {
            ["cliponaxis"] = false,
            ["marker"] = new Fields
            {
                ["symbol"] = "diamond", ["color"] = figure.Theme.Card, ["size"] = Math.Round(figure.Preset.LinePx * 4, 1),
                ["line"] = new Fields { ["color"] = figure.Theme.Ink, ["width"] = Math.Round(figure.Preset.LinePx * 0.6, 1) },
            },
            ["hoverinfo"] = "text",
            ["hovertext"] = new[] { Sentences.Escape($"As it stands: {line.Across.Input.InWords(now.Across, line.Currency, culture)}, {line.Solved.Input.InWords(now.Solved, line.Currency, culture)}") },
        });
        places.Keep(now, figure.Preset.LinePx * 2.2);
        figure.Label(Words, across.At(now.Across), up.At(now.Solved), places.Side(Words, now), strong: false, name: Words);
    }

    private static (double Across, double Solved)? Now(BreakEvenLine line) =>
        line.AsItStands is { } now && now.Across >= line.Across.Low && now.Across <= line.Across.High && now.Solved >= line.Solved.Low && now.Solved <= line.Solved.High ? now : null;
}
