namespace SolarEconomics;

/// <summary>Who decides, interval by interval, what battery, generator and waiting loads do.</summary>
/// <remarks>
/// One method to write. In a notebook: <c>var evenings = Control.Of("evenings only", now => now.HourOfDay >= 17 ? now.Cover() : now.Store());</c>
/// A control knows the present, the prices ahead and nothing else: no sun or use of later intervals. Keep it without memory of its own, so that it is safe
/// to share between threads; what it may need to remember stands in <see cref="Situation"/>.
/// </remarks>
public abstract record Control
{
    /// <summary>What it is called in results.</summary>
    public abstract string Name { get; }

    /// <summary>Decides one interval.</summary>
    /// <param name="now">What is known at its start; valid during this call only.</param>
    /// <returns>What to do. What cannot be done ends the run by <see cref="ImpossibleOrderException"/>; nothing is clamped in silence.</returns>
    public abstract Order Decide(Situation now);

    /// <summary>Self-consumption first: surplus into the battery, shortfall out of it.</summary>
    public static Control SelfConsumption { get; } = new SelfConsumption();

    /// <summary>A control written as one expression.</summary>
    /// <param name="name">What it is called in results; not empty.</param>
    /// <param name="decide">Decides one interval. What it throws ends the run by <see cref="ControlFailedException"/>, which names the interval.</param>
    public static Control Of(string name, Func<Situation, Order> decide)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(decide);
        return new OwnControl(name, decide);
    }

    private sealed record OwnControl(string Title, Func<Situation, Order> Rule) : Control
    {
        public override string Name => Title;

        public override Order Decide(Situation now)
        {
            try
            {
                return Rule(now);
            }
            catch (Exception fault) when (fault is not (ImpossibleOrderException or OperationCanceledException))
            {
                throw Throw.ControlFailed(Title, now.Interval, now.Local, fault);
            }
        }
    }
}
