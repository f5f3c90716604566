namespace SolarEconomics;

public sealed partial class Outlook
{
    /// <summary>This outlook over many draws of what is not known for sure.</summary>
    /// <param name="uncertainties">Inputs with their odds, and the weather of each year.</param>
    /// <param name="options">How many draws, from which seed; <see langword="null"/> for the defaults.</param>
    /// <param name="progress">Told the share of draws taken.</param>
    /// <param name="cancel">Stops within a chunk of draws, well under 100 ms.</param>
    /// <exception cref="ArgumentException">An input stands twice, a distribution lies outside its input's range, correlations contradict each other, or nothing is drawn.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    /// <remarks>Weather and failures are drawn for each year by themselves, all else once for all years. The same seed gives the same draws on any number of threads.
    /// Whoever listens around long work (<see cref="WorkProgress.Around(WorkListener)"/>, such as a notebook's page) is told the answer of the first 4,096 draws, marked as a preview.</remarks>
    public OutlookChances HowSure(Uncertainties uncertainties, DrawOptions? options = null, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(uncertainties);
        options = (options ?? new DrawOptions()).Checked();
        uncertainties.Checked();
        if (uncertainties.Inputs.Count == 0 && uncertainties.WeatherSd == 0 && Assumptions.WearingParts.Count == 0) throw Throw.NothingDrawn();
        Require.Within(options.MostDraws, 100, 5_000_000, "draws of an outlook");
        var sampler = new OutlookSampler(Record, Assumptions.Years);
        var draws = new InputDraws(uncertainties, options.Seed);
        var (npv, position, payback) = (new double[options.MostDraws], new double[options.MostDraws], new double[options.MostDraws]);
        var inputs = draws.Names.Select(_ => new double[options.MostDraws]).ToArray();
        return Answer(DrawRun.Take(options, Fill, npv, progress, cancel, taken => Answer(taken, isPreview: true)), isPreview: false);

        OutlookChances Answer(int taken, bool isPreview)
        {
            var notes = NotesOf(uncertainties, draws, taken);
            return new OutlookChances(
                new Chances("net present value at the first purchase", Currency, new DrawnValues(npv, taken), options) { Notes = notes },
                new Chances("cash position at the horizon", Currency, new DrawnValues(position, taken), options) { Notes = notes },
                new PaybackOdds(payback, taken, Assumptions.Years), draws.Names, inputs) { IsPreview = isPreview };
        }

        void Fill(int first, int count)
        {
            var weather = new double[sampler.WeatherYears];
            var values = new double[inputs.Length];
            var jumps = new List<(int Day, double Amount)>();
            for (var draw = first; draw < first + count; draw++)
            {
                var assumptions = draws.Put(Assumptions, draw, values);
                draws.Weather(draw, weather);
                jumps.Clear();
                foreach (var part in assumptions.WearingParts)
                {
                    var number = draw;
                    sampler.AddFailures(part, assumptions, failure => draws.ScoreOf($"failure of {part.Part}", number, failure), jumps);
                }
                var found = sampler.At(assumptions, weather, jumps);
                (npv[draw], position[draw], payback[draw]) = (found.Npv, found.PositionAtHorizon, found.PaybackYears);
                for (var i = 0; i < values.Length; i++) inputs[i][draw] = values[i];
            }
        }
    }

    private static List<string> NotesOf(Uncertainties uncertainties, InputDraws draws, int taken)
    {
        var notes = new List<string>();
        foreach (var (input, distribution) in uncertainties.Inputs)
            notes.Add(FormattableString.Invariant($"{input.Name}: mean {distribution.Mean:0.####}, spread {distribution.Sd:0.####}, drawn once for all years."));
        foreach (var pair in uncertainties.Pairs)
            notes.Add(FormattableString.Invariant($"{pair.First} and {pair.Second} move together (correlation {pair.Correlation:0.##})."));
        if (uncertainties.WeatherSd > 0) notes.Add(FormattableString.Invariant($"Each year's generation by itself: {uncertainties.WeatherSd * 100:0.#} % spread."));
        for (var i = 0; i < draws.Held.Count; i++)
        {
            if (draws.Held[i] > 0) notes.Add(FormattableString.Invariant($"{draws.Names[i]}: {draws.Held[i]} of {taken} draws lay beyond what an outlook takes and were held at its end."));
        }
        return notes;
    }
}
