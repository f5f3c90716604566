using System.Globalization;

namespace SolarEconomics;

public sealed partial class Outlook
{
    /// <summary>Options beside each other and beside doing nothing, over this outlook's horizon.</summary>
    /// <param name="options">One or more options, each name once. Doing nothing is always among them.</param>
    /// <exception cref="ArgumentException">No option, a name twice, a day outside the outlook, or a loan that runs beyond the horizon.</exception>
    /// <exception cref="RecordException">A currency other than the site's.</exception>
    public UpgradeComparison Compare(params IReadOnlyList<UpgradeOption> options)
    {
        ArgumentNullException.ThrowIfNull(options);
        if (options.Count == 0) throw Throw.NoOption();
        foreach (var twice in options.GroupBy(o => o.Name, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1)) throw Throw.OptionTwice(twice.Key);
        var ranked = options.Select(o => new OptionMoney(Record, Assumptions, o)).OrderByDescending(m => m.Npv).ToList();
        var results = ranked.Select((money, i) => ResultOf(money, NextBest(ranked, i))).ToList();
        return new UpgradeComparison(results, ranked[0].Npv <= 0, [.. ComparisonWords.Flips(results, CultureInfo.InvariantCulture)]);
    }

    /// <summary>The net present value of an option over many draws. Two options drawn from one seed can be set against each other draw by draw.</summary>
    /// <param name="option">The option.</param>
    /// <param name="uncertainties">Inputs with their odds, and the weather of each year.</param>
    /// <param name="options">How many draws, from which seed; <see langword="null"/> for 2,000 from seed 1.</param>
    /// <param name="progress">Told the share of draws taken.</param>
    /// <param name="cancel">Stops within a chunk of draws.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    /// <remarks>Whoever listens around long work (<see cref="WorkProgress.Around(WorkListener)"/>, such as a notebook's page) is told the answer of the first 256 draws, marked as a preview.</remarks>
    public Chances HowSure(UpgradeOption option, Uncertainties uncertainties, DrawOptions? options = null, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(option);
        ArgumentNullException.ThrowIfNull(uncertainties);
        options = (options ?? new DrawOptions { MostDraws = 2_000 }).Checked();
        uncertainties.Checked();
        var draws = new InputDraws(uncertainties, options.Seed);
        var years = Horizon.Year - WorthToDate.Period.End.Year + 1;
        var npv = new double[options.MostDraws];
        return Answer(DrawRun.Take(options, Fill, npv, progress, cancel, taken => Answer(taken, isPreview: true), DrawRun.FirstLookOfSlowDraws), isPreview: false);

        Chances Answer(int taken, bool isPreview) => new($"worth of {option.Name} beside doing nothing", Currency, new DrawnValues(npv, taken), options)
        {
            Notes = NotesOf(uncertainties, draws, taken), IsPreview = isPreview,
        };

        void Fill(int first, int count)
        {
            var weather = new double[years];
            var values = new double[draws.Names.Count];
            for (var draw = first; draw < first + count; draw++)
            {
                cancel.ThrowIfCancellationRequested();
                var assumptions = draws.Put(Assumptions, draw, values).Checked();
                draws.Weather(draw, weather);
                npv[draw] = new OptionMoney(Record, assumptions, option).NpvWith(weather);
            }
        }
    }

    /// <summary>What the choice would fall back to without this option: the best of the others, doing nothing among them.</summary>
    private static double NextBest(List<OptionMoney> ranked, int without) =>
        Math.Max(0, ranked.Where((_, i) => i != without).Select(m => m.Npv).DefaultIfEmpty(0).Max());

    private OptionResult ResultOf(OptionMoney money, double nextBest)
    {
        Money? At(double price) => money.Option.Price > 0 && price > 0 ? Round(price) : null;
        var price = (double)money.Option.Price;
        return new OptionResult(money.Option, Round(money.Npv), Round(money.Invested), money.Sir, money.PaybackYears, Round(money.YearlyWorth),
            At(price + (money.Npv / money.FactorOfPrice)), At(price + ((money.Npv - nextBest) / money.FactorOfPrice)),
            money.OwnerNpv is { } owner ? Round(owner) : null);
    }
}
