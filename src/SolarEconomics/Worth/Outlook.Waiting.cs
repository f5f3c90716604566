namespace SolarEconomics;

public sealed partial class Outlook
{
    /// <summary>What it is worth to wait and decide then: an option bought now, bought later whatever comes, and bought later only where what is known by then says so.</summary>
    /// <param name="option">The option.</param>
    /// <param name="years">Years to wait. Range: 1 to 30.</param>
    /// <param name="uncertainties">Inputs with their odds, and the weather of each year.</param>
    /// <param name="waiting">How prices fall meanwhile, and what is known then; <see langword="null"/> for the defaults.</param>
    /// <param name="options">How many draws, from which seed; <see langword="null"/> for 2,000 from seed 1. A stop rule is not looked at.</param>
    /// <param name="progress">Told the share of draws taken.</param>
    /// <param name="cancel">Stops within a draw.</param>
    /// <exception cref="ArgumentException">An input stands twice, a distribution lies outside its input's range, or a day lies outside the outlook.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    /// <remarks>Equation: mean over draws of worth · [fitted worth given what is known &gt; 0]. All three plans meet the same draws. Source: waiting-1.
    /// Whoever listens around long work (<see cref="WorkProgress.Around(WorkListener)"/>, such as a notebook's page) is told the answer of the first 256 draws, marked as a preview.</remarks>
    public WaitingWorth Waiting(UpgradeOption option, int years, Uncertainties uncertainties, WaitingOptions? waiting = null, DrawOptions? options = null,
        IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(option);
        ArgumentNullException.ThrowIfNull(uncertainties);
        waiting ??= new WaitingOptions();
        options = ((options ?? new DrawOptions { MostDraws = 2_000 }) with { StopAtStandardError = null }).Checked();
        uncertainties.Checked();
        var later = option.Waiting(years, Fall(waiting.PriceFallPerYear.Mean), waiting.ResaleFallPerYear);
        var draws = new InputDraws(uncertainties, options.Seed);
        var weatherYears = Horizon.Year - WorthToDate.Period.End.Year + 1;
        var (now, then, falls) = (new double[options.MostDraws], new double[options.MostDraws], new double[options.MostDraws]);
        var inputs = draws.Names.Select(_ => new double[options.MostDraws]).ToArray();
        return Answer(DrawRun.Take(options, Fill, then, progress, cancel, taken => Answer(taken, isPreview: true), DrawRun.FirstLookOfSlowDraws), isPreview: false);

        WaitingWorth Answer(int taken, bool isPreview)
        {
            var known = draws.Names.Select((name, k) => (Name: name, Values: inputs[k])).Where(i => waiting.Known.Any(w => w.Name == i.Name)).ToList();
            if (waiting.PriceFallPerYear.Sd > 0) known.Add(("fall of the option's price", falls));
            var (decided, buyShare) = LaterDecision.Of([.. known.Select(i => i.Values[..taken])], then[..taken]);
            var notes = NotesOf(uncertainties, draws, taken);
            Chances Of(string plan, double[] values) =>
                new($"worth of {option.Name} beside doing nothing, {plan}", Currency, new DrawnValues(values, taken), options) { Notes = notes };
            return new WaitingWorth(option, years, [.. known.Select(i => i.Name)], Of("bought now", now), Of($"bought {later.From.Year} whatever comes", then), Of("decided again", decided), buyShare)
            {
                IsPreview = isPreview,
            };
        }

        void Fill(int first, int count)
        {
            var weather = new double[weatherYears];
            var values = new double[inputs.Length];
            for (var draw = first; draw < first + count; draw++)
            {
                cancel.ThrowIfCancellationRequested();
                var assumptions = draws.Put(Assumptions, draw, values).Checked();
                for (var k = 0; k < values.Length; k++) inputs[k][draw] = values[k];
                draws.Weather(draw, weather);
                falls[draw] = Fall(waiting.PriceFallPerYear.AtScore(draws.ScoreOf($"price fall of {option.Name}", draw, 0)));
                now[draw] = new OptionMoney(Record, assumptions, option).NpvWith(weather);
                then[draw] = new OptionMoney(Record, assumptions, option.Waiting(years, falls[draw], waiting.ResaleFallPerYear)).NpvWith(weather);
            }
        }
    }

    private static double Fall(double perYear) => Math.Clamp(perYear, -0.5, 0.5);
}
