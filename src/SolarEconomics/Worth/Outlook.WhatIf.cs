namespace SolarEconomics;

public sealed partial class Outlook
{
    /// <summary>Rows and columns of a grid's first answer.</summary>
    private const int FewSteps = 5;

    /// <summary>Each input moved over its declared range while all others stay: which moves the answer most.</summary>
    /// <param name="ranges">Inputs with their ends; one or more, each once.</param>
    /// <param name="measure">The amount looked at; <see langword="null"/> for the net present value.</param>
    /// <param name="progress">Told the share of bars done.</param>
    /// <param name="cancel">Stops between bars.</param>
    /// <exception cref="ArgumentException">No range, or an input twice.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public Tornado Tornado(IReadOnlyList<DeclaredRange> ranges, OutlookMeasure? measure = null, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(ranges);
        if (ranges.Count == 0) throw Throw.NoRange();
        foreach (var twice in ranges.GroupBy(r => r.Input.Name, StringComparer.Ordinal).Where(g => g.Count() > 1)) throw Throw.InputTwice(twice.Key);
        measure ??= OutlookMeasure.Npv;
        var bars = new List<TornadoBar>();
        using var work = WorkProgress.Begin(progress);
        foreach (var range in ranges)
        {
            cancel.ThrowIfCancellationRequested();
            bars.Add(new TornadoBar(range, Round(measure.Of(With(range.Input, range.Low))), Round(measure.Of(With(range.Input, range.High))), range.Input.ReadFrom(this)));
            work.Report((double)bars.Count / ranges.Count);
        }
        return new Tornado(measure.Name, Round(measure.Of(this)), [.. bars.OrderByDescending(b => b.Swing.Amount)]);
    }

    /// <summary>An amount over two inputs at once.</summary>
    /// <param name="down">Input that changes from row to row.</param>
    /// <param name="across">Input that changes from column to column.</param>
    /// <param name="steps">Rows, and columns. Range: 2 to 101.</param>
    /// <param name="measure">The amount looked at; <see langword="null"/> for the net present value.</param>
    /// <param name="cancel">Stops between cells.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    /// <remarks>Whoever listens around long work (<see cref="WorkProgress.Around(WorkListener)"/>, such as a notebook's page) is told five rows and columns first, marked as a preview.</remarks>
    public TwoWayGrid Grid(DeclaredRange down, DeclaredRange across, int steps = 7, OutlookMeasure? measure = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(down);
        ArgumentNullException.ThrowIfNull(across);
        Require.Within(steps, 2, 101, "rows and columns");
        measure ??= OutlookMeasure.Npv;
        var (rows, columns) = (down.Steps(steps), across.Steps(steps));
        using var work = WorkProgress.Begin();
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancel, work.Stop);
        if (work.HasPreviewReader && steps > 2 * FewSteps)
        {
            var few = Of(Some(rows), Some(columns), null) with { PreviewOf = steps };
            if (work.WantsPreview((double)(FewSteps * FewSteps) / (steps * steps))) work.TellPreview(few);
        }
        return Of(rows, columns, work);

        static double[] Some(IReadOnlyList<double> all) => [.. Enumerable.Range(0, FewSteps).Select(k => all[k * (all.Count - 1) / (FewSteps - 1)])];

        TwoWayGrid Of(IReadOnlyList<double> downs, IReadOnlyList<double> acrosses, WorkProgress? told)
        {
            var amounts = new List<IReadOnlyList<Money>>();
            foreach (var row in downs)
            {
                var line = new List<Money>();
                foreach (var column in acrosses)
                {
                    stop.Token.ThrowIfCancellationRequested();
                    line.Add(Round(measure.Of(With(across.Input.Put(down.Input.Put(Assumptions, row), column)))));
                }
                amounts.Add(line);
                told?.Report((double)amounts.Count / steps);
            }
            return new TwoWayGrid(measure.Name, down.Input, downs, across.Input, acrosses, amounts);
        }
    }

    /// <summary>The value of an input at which an amount is just 0, all else as it stands; where there is none the result says why.</summary>
    /// <param name="range">The input and the ends between which to search.</param>
    /// <param name="measure">The amount looked at; <see langword="null"/> for the net present value.</param>
    public BreakEven BreakEven(DeclaredRange range, OutlookMeasure? measure = null)
    {
        ArgumentNullException.ThrowIfNull(range);
        measure ??= OutlookMeasure.Npv;
        var found = ZeroSearch.Along(range, value => measure.Of(With(range.Input, value)));
        var end = found.Zeros.Count switch
        {
            1 => BreakEvenEnd.Found,
            > 1 => BreakEvenEnd.Several,
            _ => found.AtLow > 0 ? BreakEvenEnd.AlwaysAbove : BreakEvenEnd.AlwaysBelow,
        };
        return new BreakEven(measure.Name, range, found.Zeros, end, Round(found.AtLow), Round(found.AtHigh), range.Input.ReadFrom(this))
        {
            Jumps = found.Jumps, Looks = found.Looks, Unclear = found.Unclear,
        };
    }

    /// <summary>All pairs of two inputs at which an amount is just 0.</summary>
    /// <param name="across">The input that is stepped through.</param>
    /// <param name="solved">The input that is solved for at each step.</param>
    /// <param name="steps">Steps across. Range: 2 to 101.</param>
    /// <param name="measure">The amount looked at; <see langword="null"/> for the net present value.</param>
    /// <param name="cancel">Stops between steps.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public BreakEvenLine BreakEvenLine(DeclaredRange across, DeclaredRange solved, int steps = 11, OutlookMeasure? measure = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(across);
        ArgumentNullException.ThrowIfNull(solved);
        Require.Within(steps, 2, 101, "steps");
        measure ??= OutlookMeasure.Npv;
        using var work = WorkProgress.Begin();
        double Amount(double first, double second) => measure.Of(With(solved.Input.Put(across.Input.Put(Assumptions, first), second)));
        var found = new List<(double At, ZerosFound Search, IReadOnlyList<bool?> Rises)>();
        foreach (var first in across.Steps(steps))
        {
            work.Report((double)found.Count / steps);
            cancel.ThrowIfCancellationRequested();
            double AmountHere(double second) => Amount(first, second);
            var search = ZeroSearch.Along(solved, AmountHere);
            found.Add((first, search, search.Rises(solved, AmountHere)));
        }
        // Between two steps on different sides of 0 at an end of the other range the line leaves by that end.
        var edges = new List<(double, double)>();
        foreach (var (before, after) in across.Input.IsWhole ? [] : found.Zip(found.Skip(1)))
        {
            cancel.ThrowIfCancellationRequested();
            var between = across.Input.Between(before.At, after.At);
            if (before.Search.AtLow * after.Search.AtLow < 0) AddEdge(between, solved.Low);
            if (before.Search.AtHigh * after.Search.AtHigh < 0) AddEdge(between, solved.High);
        }
        var sure = found.Where(f => f.Search.Zeros.Count == 0 && f.Search.Unclear.Count == 0).ToList();
        return new BreakEvenLine(measure.Name, across, solved, [.. found.SelectMany(f => f.Search.Zeros.Select(z => (f.At, z)))], found.Count, Currency)
        {
            Unclear = [.. found.Where(f => f.Search.Unclear.Count > 0).Select(f => f.At)],
            AlwaysAbove = [.. sure.Where(f => f.Search.AtLow > 0).Select(f => f.At)],
            AlwaysBelow = [.. sure.Where(f => f.Search.AtLow <= 0).Select(f => f.At)],
            Jumps = [.. found.SelectMany(f => f.Search.Jumps.Select(z => (f.At, z)))],
            GainsAbove = [.. found.SelectMany(f => f.Rises)],
            Edges = edges,
            AsItStands = (across.Input.ReadFrom(this), solved.Input.ReadFrom(this)),
        };

        void AddEdge(DeclaredRange between, double end)
        {
            if (ZeroSearch.Along(between, first => Amount(first, end)).Zeros is [var at]) edges.Add((at, end));
        }
    }

    /// <summary>Net present value with every digit.</summary>
    internal double ExactNpv => _discounted.AtEnd;

    /// <summary>Cash position at the horizon with every digit.</summary>
    internal double ExactPosition => _path.AtEnd;

    private Outlook With(OutlookInput input, double value) => With(input.Put(Assumptions, value));
}
