using System.Globalization;

namespace SolarEconomics;

/// <summary>An outlook over many draws: what it may be worth, when it may be paid back, and which input to learn more about.</summary>
public sealed class OutlookChances : IFinding
{
    private readonly IReadOnlyList<string> _names;
    private readonly double[][] _inputs;
    private readonly Lazy<IReadOnlyList<InputKnowledge>> _knowing;

    internal OutlookChances(Chances npv, Chances positionAtHorizon, PaybackOdds payback, IReadOnlyList<string> names, double[][] inputs)
    {
        (Npv, PositionAtHorizon, Payback, _names, _inputs) = (npv, positionAtHorizon, payback, names, inputs);
        _knowing = new Lazy<IReadOnlyList<InputKnowledge>>(() => Knowledge(null));
    }

    /// <summary>Net present value at the first purchase.</summary>
    public Chances Npv { get; }

    /// <summary>Cash position at the horizon, undiscounted.</summary>
    public Chances PositionAtHorizon { get; }

    /// <summary>When it is paid back.</summary>
    public PaybackOdds Payback { get; }

    /// <summary>Whether only the first draws were taken and the others are still at work.</summary>
    public bool IsPreview { get; internal init; }

    /// <summary>The inputs, the one first whose knowledge would narrow the net present value most.</summary>
    public IReadOnlyList<InputKnowledge> Knowing => _knowing.Value;

    /// <summary>The same for a decision between this and another outlook: what knowing each input before choosing is worth.</summary>
    /// <param name="other">Drawn from the same seed, with the same uncertainties.</param>
    /// <exception cref="ArgumentException">Seeds or numbers of draws differ.</exception>
    public IReadOnlyList<InputKnowledge> KnowingBeforeChoosing(OutlookChances other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Knowledge(Npv.Against(other.Npv).Difference);
    }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        var finding = Npv.Say(culture);
        var payback = Payback.Say(culture);
        var advice = Knowing.Count > 0 && Knowing[0].ShareOfVariance > 0.01
            ? $" What would narrow it most: to know the {Knowing[0].Input} ({ChanceWords.Percent(Knowing[0].ShareOfVariance, culture)} of the variance)."
            : "";
        return finding with
        {
            Words = $"{(IsPreview ? PreviewWords(culture) : "")}{finding.Words} {payback.Figure} {payback.Words}{advice}",
            Tables = [.. finding.Tables, .. payback.Tables, KnowingTable(culture)],
        };
    }

    private string PreviewWords(CultureInfo culture) =>
        $"is a preview from {Npv.Values.Count.ToString("#,0", culture)} of {Npv.Options.MostDraws.ToString("#,0", culture)} draws; " +
        $"one standard error of the mean is {Wording.Exact(Npv.InMoney(Npv.Values.StandardError), culture)}. It is the ";

    internal IReadOnlyList<InputKnowledge> Knowledge(DrawnValues? decision)
    {
        var values = decision ?? Npv.Values;
        var sd = values.Sd;
        var found = _names.Select((name, i) =>
        {
            var share = DrawGroups.ShareOfVariance(_inputs[i], values.Values);
            double? worth = decision is null ? null : DrawGroups.WorthForDecision(_inputs[i], decision.Values);
            return new InputKnowledge(name, share, sd * Math.Sqrt(1 - share), worth);
        });
        return decision is null
            ? [.. found.OrderByDescending(k => k.ShareOfVariance)]
            : [.. found.OrderByDescending(k => k.WorthForDecision)];
    }

    private FindingTable KnowingTable(CultureInfo culture) => new($"What knowing an input for sure would take away ({Npv.Currency}); inputs that move together share theirs",
        ["Input", "Share of the variance", "Spread left"],
        [.. Knowing.Select(k => (IReadOnlyList<string>)[k.Input, ChanceWords.Percent(k.ShareOfVariance, culture), Wording.Whole(Npv.InMoney(k.SpreadLeft), culture)])]);
}
